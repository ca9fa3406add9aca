import { flags, silent } from '../tester.ts';
import { received } from './_results.ts';

describe('follow-up/no-plan', () => {
  const code = 'follow-up/no-plan';
  const told = (diagnosis: string, next = ''): string =>
    received(`          diagnosis: ${diagnosis}\n          told: 2026-03-10\n${next}`);
  it('asks for a plan of a cancer a working day after telling, and of other grave findings after three', () => {
    flags(code, told('⟦basal cell carcinoma⟧'), { today: '2026-03-12', severity: 'warning' });
    silent(code, told('basal cell carcinoma'), { today: '2026-03-11' });
    flags(code, told('⟦severely dysplastic nevus⟧'), { today: '2026-03-16' });
    silent(code, told('severely dysplastic nevus'), { today: '2026-03-13' });
    flags(code, told('⟦insufficient tissue⟧'), { today: '2026-03-16' });
  });
  it('asks for none of what is harmless, and is content with any plan', () => {
    silent(code, told('seborrheic keratosis'), { today: '2026-06-12' });
    for (const next of ['excision booked 2026-07-01', 'referred'])
      silent(code, told('basal cell carcinoma', `          next: ${next}\n`), { today: '2026-06-12' });
  });
  it('is not content with none needed where the report asks for a step', () => {
    for (const diagnosis of [
      'MIS',
      'compound nevus with severe atypia',
      'dysplastic nevus, extends to the deep margin',
      'nevus, re-excise',
      'container empty',
    ])
      flags(code, told(`"${diagnosis}"`, '          next: ⟦none needed⟧\n'), { severity: 'warning' });
    for (const diagnosis of [
      'no evidence of malignancy',
      'dysplastic nevus, mild, margins clear',
      'nevus, 3 mm, extends to the base',
      'scar, no residual melanoma',
      'nevus; re-excision not needed',
    ])
      silent(code, told(`"${diagnosis}"`, '          next: none needed\n'));
  });
});
