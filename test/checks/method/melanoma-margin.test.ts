import { flags, silent } from '../tester.ts';
import { note } from './_lesion.ts';

/** 1 to 3 mm: American Academy of Dermatology and NCCN patient guideline 2018. */
describe('method/melanoma-margin', () => {
  const code = 'method/melanoma-margin';
  const margin = (typed: string, question = 'rule out melanoma', method = 'excisional'): string =>
    note(`lesion: black macule 8 mm; question: ${question}; method: ${method}; margin: ${typed}`);

  it('flags less than 1 and more than 3 mm', () => {
    flags(code, margin('⟦5 mm⟧'), { severity: 'information' });
    flags(code, margin('⟦0.5 mm⟧'));
    for (const typed of ['1 mm', '2 mm', '3 mm', '0.2 cm', '??']) silent(code, margin(typed));
  });

  it('asks for the margin of an excision, of nothing else, and not where it was made already', () => {
    const without = (question: string, method: string): string =>
      note(`lesion: black macule 8 mm; question: ${question}; method: ${method}`);
    flags(code, without('rule out melanoma', '⟦excisional⟧'), { severity: 'information' });
    for (const method of ['deep shave', 'punch', 'incisional', 'wide excision'])
      silent(code, without('rule out melanoma', method));
    silent(code, without('melanoma in situ, re-excision', 'excisional'));
    silent(code, without('lipoma', 'excisional'));
  });

  it('is silent where the diagnosis is made, and where no melanoma is suspected', () => {
    silent(code, margin('10 mm', 'residual melanoma in situ'));
    silent(code, margin('10 mm', 'melanoma', 'wide excision'));
    silent(code, margin('5 mm', 'basal cell carcinoma'));
    silent(code, margin('5 mm', 'nevus, no concern for melanoma'));
  });
});
