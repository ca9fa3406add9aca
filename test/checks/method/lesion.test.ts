import assert from 'node:assert/strict';
import { messageOf } from '../../../src/checks/index.ts';
import { flags, silent } from '../tester.ts';

const note = (rows: string): string =>
  `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: left upper back\n    ${rows.split('; ').join('\n    ')}\n`;

describe('method/scissor-flat', () => {
  const code = 'method/scissor-flat';

  it('flags scissors for what is flat', () => {
    flags(code, note('lesion: brown macule 5 mm; method: ⟦scissor⟧'), { severity: 'information' });
    flags(code, note('lesion: scaly patch; method: ⟦snip⟧'));
    const [finding] = flags(code, note('lesion: flat brown spot; method: ⟦snip⟧'));
    assert.match(messageOf(finding!), /the lesion is described as flat\./);
  });

  it('is silent on what stands up, on what is not described, and on other methods', () => {
    for (const lesion of [
      'skin tag 3 mm',
      'pedunculated papule',
      'flat-topped papule',
      'papule on a macule',
      'soft lesion 4 mm',
      'flat wart',
      '??',
    ])
      silent(code, note(`lesion: ${lesion}; method: scissor`));
    silent(code, note('method: scissor'));
    silent(code, note('lesion: brown macule 5 mm; method: shave'));
  });
});

describe('method/worn-lesion', () => {
  const code = 'method/worn-lesion';

  it('flags what is scratched, eroded or fading, for a disease that is read from a whole lesion', () => {
    flags(code, note('lesion: ⟦excoriated⟧ plaques; question: psoriasis vs eczema; method: punch'), {
      severity: 'information',
    });
    flags(code, note('lesion: ⟦fading⟧ purpuric papules; question: rule out vasculitis; method: punch'));
  });

  it('is silent on what is denied, beside the lesion, of tumors and ulcers, and where nothing is asked', () => {
    silent(code, note('lesion: papules without excoriation; question: eczema; method: punch'));
    silent(code, note('lesion: eroded plaques; question: lupus; relation: perilesional; method: punch'));
    silent(code, note('lesion: eroded nodule; question: basal cell carcinoma vs dermatitis; method: shave'));
    silent(code, note('lesion: ulcer, eroded border; question: vasculitis; method: incisional'));
    silent(code, note('lesion: excoriated papule; question: dermatofibroma; method: punch'));
    silent(code, note('lesion: excoriated papule; method: punch'));
  });
});

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

/** Where a partial or a superficial sample is accepted: American Academy of Dermatology, biopsy recommendations. */
describe('method/melanoma-sample: what the guideline accepts', () => {
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
