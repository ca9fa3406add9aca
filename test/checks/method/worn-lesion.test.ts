import { flags, silent } from '../tester.ts';
import { note } from './_lesion.ts';

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
