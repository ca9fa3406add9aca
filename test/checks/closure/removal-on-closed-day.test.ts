import { flags, silent } from '../tester.ts';
import { note, practice } from './_removal.ts';

describe('closure/removal-on-closed-day', () => {
  const code = 'closure/removal-on-closed-day';

  it('flags a Saturday, and a closed date of the practice', () => {
    flags(code, note('left upper back', 'sutures-due: ⟦2026-03-14⟧'), { severity: 'information' });
    silent(code, note('left upper back', 'sutures-due: 2026-03-13'));
    const tables = practice('closed: [Sunday, 2026-03-13]\n');
    flags(code, note('left upper back', 'sutures-due: ⟦2026-03-13⟧'), { tables });
    silent(code, note('left upper back', 'sutures-due: 2026-03-14'), { tables });
  });

  it('is silent once they are out', () => {
    silent(code, note('left upper back', 'sutures-due: 2026-03-14\n    sutures-out: 2026-03-13'), {
      today: '2026-03-20',
    });
  });
});
