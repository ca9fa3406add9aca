import { flags, silent } from '../tester.ts';
import { dayBefore, note, windows } from './_removal.ts';

describe('closure/removal-early', () => {
  for (const [site, first] of windows)
    it(`${site}: nothing is said from ${first} on`, () => {
      for (const key of ['sutures-due', 'sutures-out']) {
        silent('closure/removal-early', note(site, `${key}: ${first}`), { today: '2026-05-01' });
        flags('closure/removal-early', note(site, `${key}: ⟦${dayBefore(first)}⟧`), { today: '2026-05-01' });
      }
    });

  it('is a warning', () => {
    flags('closure/removal-early', note('left cheek', 'sutures-due: ⟦2026-03-03⟧'), { severity: 'warning' });
  });

  it('asks about the usual day where something makes wounds hold late', () => {
    const diabetic = 'id: C-1, conditions: [diabetes]';
    flags('closure/removal-early', note('left upper back', 'sutures-due: ⟦2026-03-12⟧', diabetic), {
      severity: 'information',
    });
    silent('closure/removal-early', note('left upper back', 'sutures-due: 2026-03-16', diabetic));
  });

  it('leaves alone what is absorbed, what has no window, and what has a finding of its own', () => {
    const absorbed = note('left cheek', 'sutures-due: 2026-03-03').replace('nylon', 'polyglactin');
    silent('closure/removal-early', absorbed);
    silent('closure/removal-early', note('somewhere', 'sutures-due: 2026-03-03'));
    silent('closure/removal-early', note('left cheek', 'sutures-due: 2026-03-01'));
    silent('closure/removal-early', note('left cheek', 'sutures-due: ??'));
  });
});
