import { flags, silent } from '../tester.ts';
import { note } from './_afterwards.ts';

describe('follow-up/event-without-outcome', () => {
  const code = 'follow-up/event-without-outcome';
  const events = (rows: string): string => note(`    closure: none\nevents:\n${rows}`);
  it('waits a working day for bleeding and three for an infection', () => {
    flags(code, events('  - {on: 2026-03-05, kind: ⟦bleeding⟧}\n'), {
      today: '2026-03-07',
      severity: 'warning',
    });
    silent(code, events('  - {on: 2026-03-05, kind: bleeding}\n'), { today: '2026-03-06' });
    flags(code, events('  - {on: 2026-03-05, kind: ⟦infection⟧}\n'), { today: '2026-03-11' });
    silent(code, events('  - {on: 2026-03-05, kind: infection}\n'), { today: '2026-03-10' });
  });
  it('is content with an outcome there or in a later event, and not with one that is still open', () => {
    silent(code, events('  - {on: 2026-03-05, kind: infection, outcome: healed}\n'), { today: '2026-06-11' });
    silent(
      code,
      events(
        '  - {on: 2026-03-05, kind: infection}\n  - {on: 2026-03-12, kind: wound check, outcome: healed}\n',
      ),
      { today: '2026-06-11' },
    );
    flags(code, events('  - {on: 2026-03-05, kind: ⟦infection⟧, outcome: ongoing}\n'), {
      today: '2026-06-11',
    });
  });
  it('does not take the outcome of another procedure for it', () => {
    flags(
      code,
      events(
        '  - {on: 2026-03-05, kind: ⟦infection⟧, procedure: A}\n  - {on: 2026-03-12, kind: wound check, procedure: B, outcome: healed}\n',
      ),
      { today: '2026-06-11' },
    );
  });
  it('asks no outcome of a wound check or a call', () => {
    silent(code, events('  - {on: 2026-03-05, kind: wound check}\n  - {on: 2026-03-05, kind: call}\n'), {
      today: '2026-06-11',
    });
  });
});
