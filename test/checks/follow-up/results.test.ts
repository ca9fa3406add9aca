import { flags, silent } from '../tester.ts';
import { received } from './_results.ts';

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
