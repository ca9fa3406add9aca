import { flags, silent } from '../tester.ts';
import { note } from './_closure.ts';

describe('closure/removal-before-visit', () => {
  it('flags the date', () => {
    flags('closure/removal-before-visit', note('sutures-due: ⟦2026-03-01⟧'), { severity: 'error' });
    flags('closure/removal-before-visit', note('sutures-out: ⟦2026-02-14⟧'));
    flags('closure/removal-before-visit', note('sutures-out: {on: ⟦2025-03-14⟧, count: 2}'));
  });

  it('is silent from the day of the visit on', () => {
    silent('closure/removal-before-visit', note('sutures-due: 2026-03-02', 'sutures-out: 2026-03-16'));
    silent('closure/removal-before-visit', note('sutures-due: ??'));
  });
});
