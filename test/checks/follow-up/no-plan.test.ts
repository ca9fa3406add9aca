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
  it('asks for none of what is harmless, and is content with any plan or with none needed', () => {
    silent(code, told('seborrheic keratosis'), { today: '2026-06-12' });
    for (const next of ['none needed', 'excision booked 2026-07-01', 'referred'])
      silent(code, told('basal cell carcinoma', `          next: ${next}\n`), { today: '2026-06-12' });
  });
});

describe('a melanoma after which nothing is needed', () => {
  const code = 'follow-up/no-plan';
  const after = (diagnosis: string, next: string): string =>
    received(`          diagnosis: ${diagnosis}\n          told: 2026-03-10\n          next: ${next}\n`);
  it('is asked about', () => {
    flags(code, after('melanoma in situ', '⟦none needed⟧'), { today: '2026-03-10', severity: 'warning' });
    flags(code, after('"superficial spreading melanoma, 0.4 mm"', '⟦none⟧'));
  });
  it('is none where it was denied, or something follows', () => {
    silent(code, after('"compound nevus, no melanoma"', 'none needed'));
    silent(code, after('melanoma in situ', 'wide excision on 2026-04-01'));
  });
});
