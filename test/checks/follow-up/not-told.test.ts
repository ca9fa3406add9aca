import { flags, silent } from '../tester.ts';
import { note, sent, received } from './_results.ts';

describe('follow-up/not-told', () => {
  const code = 'follow-up/not-told';
  const untold = (diagnosis: string): string =>
    note(`${sent}      results:\n        - received: ⟦2026-03-09⟧\n          diagnosis: ${diagnosis}\n`);
  const plain = (diagnosis: string): string => untold(diagnosis).replace(/[⟦⟧]/g, '');
  it('gives an ordinary result three working days', () => {
    silent(code, plain('psoriasis'), { today: '2026-03-12' });
    flags(code, untold('psoriasis'), { today: '2026-03-13', severity: 'warning' });
    flags(code, untold('psoriasis'), { today: '2026-04-09', severity: 'error' });
  });
  it('gives a cancer one working day, whatever its words', () => {
    for (const diagnosis of [
      'melanoma in situ',
      'SCC in situ',
      'nodular basal cell carcinoma',
      'consistent with basal cell carcinoma',
      'suspicious for melanoma',
      'Merkel cell carcinoma',
      'metastatic adenocarcinoma',
    ])
      flags(code, untold(diagnosis), { today: '2026-03-11', severity: 'error' });
  });
  it('is not alarmed by a cancer that is denied, past or less likely', () => {
    for (const diagnosis of [
      'compound nevus, no evidence of melanoma',
      'scar, no residual carcinoma',
      'negative for malignancy',
      'dermal scar, history of melanoma',
    ])
      silent(code, plain(diagnosis), { today: '2026-03-11' });
  });
  it('counts a telling without a day, and not one that is still to be filled in', () => {
    silent(code, received('          diagnosis: psoriasis\n          told: {by: K.O., how: telephone}\n'), {
      today: '2026-03-20',
    });
    flags(code, received('          diagnosis: psoriasis\n          told: ⟦??⟧\n'), { today: '2026-03-20' });
  });
});
