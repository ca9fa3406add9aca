import { flags, silent } from '../tester.ts';
import { note, practice } from './_removal.ts';

const shifted = (date: string, days: number): string =>
  new Date(Date.parse(date) + days * 86_400_000).toISOString().slice(0, 10);

const dayBefore = (date: string): string => shifted(date, -1);

const dayAfter = (date: string): string => shifted(date, 1);

/** Earliest and latest day of any source: 5-Minute Clinical Consult, WikEM, suture handbook and others; see the reference table. */
describe('closure/removal-early and closure/removal-late', () => {
  for (const [site, first, last] of [
    ['left cheek', '2026-03-05', '2026-03-09'],
    ['vertex of the scalp', '2026-03-07', '2026-03-16'],
    ['left upper back', '2026-03-09', '2026-03-16'],
  ] as const)
    it(`${site}: from ${first} to ${last} nothing is said`, () => {
      const before = dayBefore(first);
      const after = dayAfter(last);
      for (const key of ['sutures-due', 'sutures-out']) {
        silent('closure/removal-early', note(site, `${key}: ${first}`), { today: '2026-05-01' });
        silent('closure/removal-late', note(site, `${key}: ${last}`), { today: '2026-05-01' });
        flags('closure/removal-early', note(site, `${key}: ⟦${before}⟧`), { today: '2026-05-01' });
        flags('closure/removal-late', note(site, `${key}: ⟦${after}⟧`), { today: '2026-05-01' });
      }
    });

  it('is a warning while it can be mended, and information of what is out late', () => {
    const today = '2026-05-01';
    flags('closure/removal-early', note('left cheek', 'sutures-due: ⟦2026-03-03⟧'), { severity: 'warning' });
    flags('closure/removal-late', note('left cheek', 'sutures-due: ⟦2026-03-20⟧'), { severity: 'warning' });
    flags('closure/removal-late', note('left cheek', 'sutures-out: ⟦2026-03-20⟧'), {
      severity: 'information',
      today,
    });
  });

  it('asks about the usual day where something makes wounds hold late', () => {
    const diabetic = 'id: C-1, conditions: [diabetes]';
    flags('closure/removal-early', note('left upper back', 'sutures-due: ⟦2026-03-12⟧', diabetic), {
      severity: 'information',
    });
    silent('closure/removal-early', note('left upper back', 'sutures-due: 2026-03-16', diabetic));
    silent('closure/removal-late', note('left upper back', 'sutures-due: 2026-03-21', diabetic));
  });

  it("widens by the practice's own window", () => {
    const tables = practice('suture-windows: [{site: back, from: 14, to: 21}]\n');
    silent('closure/removal-late', note('left upper back', 'sutures-due: 2026-03-23'), { tables });
    flags('closure/removal-late', note('left upper back', 'sutures-due: ⟦2026-03-24⟧'), { tables });
  });

  it('leaves alone what is absorbed, what has no window, and what has a finding of its own', () => {
    const absorbed = note('left cheek', 'sutures-due: 2026-03-03').replace('nylon', 'polyglactin');
    silent('closure/removal-early', absorbed);
    silent('closure/removal-early', note('somewhere', 'sutures-due: 2026-03-03'));
    silent('closure/removal-early', note('left cheek', 'sutures-due: 2026-03-01'));
    silent('closure/removal-early', note('left cheek', 'sutures-due: ??'));
  });
});
