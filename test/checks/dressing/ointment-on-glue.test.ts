import { flags, silent } from '../tester.ts';
import { note } from './_place.ts';

describe('dressing/ointment-on-glue', () => {
  const code = 'dressing/ointment-on-glue';

  it('flags ointment on glue, and nothing else', () => {
    const glued = 'method: excisional\n    closure: tissue glue';
    flags(code, note('chin', '[⟦petrolatum⟧, gauze]', glued), { severity: 'warning' });
    silent(code, note('chin', 'gauze', glued));
    silent(code, note('chin', 'petrolatum', 'method: excisional\n    closure: {material: nylon, size: 6-0}'));
  });
});
