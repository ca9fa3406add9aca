import { flags, silent } from '../tester.ts';
import { note as ofRows } from './_lesion.ts';
import { note } from './_question.ts';

describe('method/melanoma-sample', () => {
  const code = 'method/melanoma-sample';
  const asked = 'question: rule out melanoma';

  it('flags methods that may cut through the base', () => {
    for (const method of ['shave', 'tangential', 'snip'])
      flags(code, note('left upper back', `method: ⟦${method}⟧`, asked), { severity: 'warning' });
    flags(
      code,
      note('left upper back', 'method: ⟦shave⟧', 'depth: mid dermis', 'question: melanoma vs nevus'),
    );
  });

  it('counts lentigo maligna as melanoma, and leaves its broad shave on head and neck', () => {
    const lentigo = 'question: lentigo maligna';
    flags(code, note('left forearm', 'method: ⟦shave⟧', 'depth: mid dermis', lentigo), {
      severity: 'warning',
    });
    flags(code, note('left forearm', 'method: ⟦shave⟧', 'question: r/o LMM'));
    for (const site of ['left cheek', 'vertex of the scalp', 'left lateral neck'])
      silent(code, note(site, 'method: shave', 'depth: mid dermis', lentigo));
    flags(code, note('left lateral neck', 'method: ⟦shave⟧', 'depth: mid dermis', asked));
    silent(code, note('left forearm', 'method: shave', 'question: solar lentigo'));
    silent(code, note('left forearm', 'method: shave', 'question: solar lentigo, lentigo maligna unlikely'));
  });

  it('is information where a punch takes a part', () => {
    flags(code, note('left upper back', 'lesion: macule 7 x 5 mm', 'method: punch', 'size: ⟦4 mm⟧', asked), {
      severity: 'information',
    });
    flags(code, note('left upper back', 'lesion: macule 0.9 cm', 'method: punch', 'size: ⟦6 mm⟧', asked));
  });

  it('is information where a deep shave is smaller than its lesion', () => {
    flags(
      code,
      note('left upper back', 'lesion: macule 7 x 5 mm', 'method: deep shave', 'size: ⟦5 x 5 mm⟧', asked),
      { severity: 'information' },
    );
    silent(
      code,
      note('left upper back', 'lesion: macule 7 x 5 mm', 'method: deep shave', 'size: 9 x 7 mm', asked),
    );
    silent(
      code,
      note('left upper back', 'lesion: macule 7 x 5 mm', 'method: incisional', 'size: 5 mm', asked),
    );
  });

  it('is silent on what the guideline allows', () => {
    for (const method of ['deep shave', 'excisional', 'punch', 'incisional'])
      silent(code, note('left upper back', `method: ${method}`, asked));
    silent(code, note('left upper back', 'method: shave', 'depth: deep dermis', asked));
    silent(code, note('left cheek', 'method: shave', asked));
    silent(code, note('left sole', 'method: shave', asked));
    silent(code, note('left upper back', 'lesion: macule 4 mm', 'method: punch', 'size: 6 mm', asked));
    silent(code, note('left upper back', 'lesion: patch 22 mm', 'method: punch', 'size: 4 mm', asked));
  });

  for (const question of [
    'melanoma of the left thigh in 2026',
    'rule out melanoma of the left thigh in 2014',
    'melanoma, changing since 2014',
    'nevus since 2014, melanoma',
    'r/o MM',
    'r/o mm',
    'pigmented, 6 mm, MM?',
    'favor melanoma over seborrheic keratosis',
    'favor dysplastic nevus over melanoma',
    'melanoma, less likely seborrheic keratosis',
    'melanoma must be excluded',
  ])
    it(`flags the question ${question}`, () => {
      flags(code, note('left upper back', 'method: ⟦shave⟧', `question: "${question}"`));
    });

  for (const question of [
    'no concern for melanoma',
    'not melanoma',
    'history of melanoma',
    'seborrheic keratosis, favor benign, r/o melanoma',
    'melanoma unlikely',
    'seborrheic keratosis, low suspicion of melanoma',
    'family history of melanoma; nevus',
    'basal cell carcinoma; melanoma of the left thigh in 2014',
    'melanoma 2014, now nevus',
    'father had melanoma; rule out basal cell carcinoma',
    'basal cell carcinoma, FHx melanoma',
    'dysplastic nevus',
    'seborrheic keratosis, 6 mm, growing',
    'seborrheic keratosis of a few mm',
    'favor seborrheic keratosis over melanoma',
    'seborrheic keratosis, less likely melanoma',
    '??',
  ])
    it(`is silent on the question ${question}`, () => {
      silent(code, note('left upper back', 'method: shave', `question: "${question}"`));
    });
});

/** Where a partial or a superficial sample is accepted: American Academy of Dermatology, biopsy recommendations. */
describe('a sample for a suspected melanoma: what the guideline accepts', () => {
  const code = 'method/melanoma-sample';
  const at = (site: string, rows: string): string => ofRows(rows).replace('left upper back', site);

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
      ofRows(`lesion: ${lesion}; question: rule out melanoma; method: punch; size: ${size}`);
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
      silent(code, ofRows(`question: ${question}; method: shave`));
    flags(code, ofRows('question: rule out melanoma; method: ⟦shave⟧'), { severity: 'warning' });
  });
});
