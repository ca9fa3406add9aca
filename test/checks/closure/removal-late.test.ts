import { flags, silent } from '../tester.ts';
import { dayAfter, note, practice, windows } from './_removal.ts';

describe('closure/removal-late', () => {
  for (const [site, , last] of windows)
    it(`${site}: nothing is said until ${last}`, () => {
      for (const key of ['sutures-due', 'sutures-out']) {
        silent('closure/removal-late', note(site, `${key}: ${last}`), { today: '2026-05-01' });
        flags('closure/removal-late', note(site, `${key}: ⟦${dayAfter(last)}⟧`), { today: '2026-05-01' });
      }
    });

  it('is a warning while it can be changed, and information of what came out late', () => {
    flags('closure/removal-late', note('left cheek', 'sutures-due: ⟦2026-03-20⟧'), { severity: 'warning' });
    flags('closure/removal-late', note('left cheek', 'sutures-out: ⟦2026-03-20⟧'), {
      severity: 'information',
      today: '2026-05-01',
    });
  });

  it('counts the days that something adds which makes wounds hold late', () => {
    const diabetic = 'id: C-1, conditions: [diabetes]';
    silent('closure/removal-late', note('left upper back', 'sutures-due: 2026-03-21', diabetic));
  });

  it("widens by the practice's own window", () => {
    const tables = practice('suture-windows: [{site: back, from: 14, to: 21}]\n');
    silent('closure/removal-late', note('left upper back', 'sutures-due: 2026-03-23'), { tables });
    flags('closure/removal-late', note('left upper back', 'sutures-due: ⟦2026-03-24⟧'), { tables });
  });
});
