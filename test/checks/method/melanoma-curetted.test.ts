import { flags, silent } from '../tester.ts';
import { note } from './_method.ts';

describe('method/melanoma-curetted', () => {
  const code = 'method/melanoma-curetted';

  it('flags a curettage where melanoma is asked about, also where other samples in part are allowed', () => {
    flags(code, note('⟦curettage⟧', 'question: rule out melanoma'), { severity: 'warning' });
    flags(code, note('⟦ED&C⟧', 'question: SK vs melanoma'));
    flags(code, note('⟦curettage⟧', 'question: lentigo maligna').replace('left upper back', 'left cheek'));
    silent('method/melanoma-sample', note('curettage', 'question: rule out melanoma'));
  });

  it('is silent for other methods, and where melanoma is not suspected', () => {
    silent(code, note('deep shave', 'question: rule out melanoma'));
    silent(code, note('shave', 'question: rule out melanoma'));
    silent(code, note('curettage', 'question: seborrheic keratosis, no concern for melanoma'));
    silent(code, note('curettage', 'question: superficial BCC'));
  });
});
