import { flags, silent } from '../tester.ts';
import { note } from './_lesion.ts';

/** Where a partial or a superficial sample is accepted: American Academy of Dermatology, biopsy recommendations. */
describe('a sample for a suspected melanoma: what the guideline accepts', () => {
  const code = 'method/melanoma-sample';
  const at = (site: string, rows: string): string => note(rows).replace('left upper back', site);

  for (const site of [
    'left cheek',
    'nasal tip',
    'left upper eyelid',
    'left helix',
    'left palm',
    'right sole',
    'right great toenail',
  ])
    it(`a shave or a small punch at the ${site}`, () => {
      silent(code, at(site, 'question: rule out melanoma; method: shave'));
      silent(
        code,
        at(site, 'lesion: brown patch 12 mm; question: rule out melanoma; method: punch; size: 4 mm'),
      );
    });

  it('a part of a very large lesion, and no part of one that is not', () => {
    const part = (lesion: string, size: string): string =>
      note(`lesion: ${lesion}; question: rule out melanoma; method: punch; size: ${size}`);
    silent(code, part('black patch 4 cm', '6 mm'));
    flags(code, part('black macule 9 mm', '⟦4 mm⟧'), { severity: 'information' });
    silent(code, part('black macule 5 mm', '6 mm'));
  });

  it('any sample where suspicion is low', () => {
    for (const question of [
      'seborrheic keratosis, melanoma unlikely',
      'nevus, low suspicion for melanoma',
      'no concern for melanoma',
    ])
      silent(code, note(`question: ${question}; method: shave`));
    flags(code, note('question: rule out melanoma; method: ⟦shave⟧'), { severity: 'warning' });
  });
});
