import { flags, silent } from '../tester.ts';

const note = (rest: string): string => `visit: 2026-03-02
patient: {id: C-1, born: 1961-08-09, weight: 62 kg}
procedures:
  - site: left upper back
    method: punch
    size: 4 mm
${rest}`;

describe('follow-up/sutures-overdue', () => {
  const code = 'follow-up/sutures-overdue';
  const closed = '    ⟦closure⟧: {material: nylon, size: 4-0, technique: simple interrupted, count: 2}\n';
  const plain = closed.replace(/[⟦⟧]/g, '');
  it('speaks when the window of the back, 10 to 14 days, is over', () => {
    silent(code, note(plain), { today: '2026-03-16' });
    flags(code, note(closed), { today: '2026-03-17', severity: 'warning' });
  });
  it('keeps to a later day that the note plans', () => {
    silent(code, note(`${plain}    sutures-due: 2026-03-20\n`), { today: '2026-03-20' });
    flags(code, note(`${plain}    sutures-due: ⟦2026-03-20⟧\n`), { today: '2026-03-21' });
  });
  it('is silent once they are out, by the procedure or by an event', () => {
    silent(code, note(`${plain}    sutures-out: 2026-03-14\n`), { today: '2026-06-21' });
    silent(code, note(`${plain}    sutures-out: {by: N.B.}\n`), { today: '2026-06-21' });
    silent(code, note(`${plain}events:\n  - {on: 2026-03-14, kind: suture removal}\n`), {
      today: '2026-06-21',
    });
  });
  it('asks nothing of absorbable stitches and of wounds without any', () => {
    for (const closure of ['{material: fast-absorbing gut, count: 2}', 'none', 'second intention'])
      silent(code, note(`    closure: ${closure}\n`), { today: '2026-06-21' });
  });
});

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

describe('follow-up/infection-details', () => {
  const code = 'follow-up/infection-details';
  const event = (rest: string): string =>
    note(`    closure: none\nevents:\n  - {on: 2026-03-05, kind: ⟦infection⟧, outcome: healed${rest}}\n`);
  it('asks for signs and for what was done, also where no day is known', () => {
    flags(code, event(''), { severity: 'information' });
    flags(code, event(', signs: pus'));
    flags(code, event(', action: culture taken'));
  });
  it('is silent where both are there', () => {
    silent(code, event(', signs: pus, action: culture taken').replace(/[⟦⟧]/g, ''));
  });
});
