import { flags, silent } from '../tester.ts';
import { note } from './_specimen.ts';

describe('specimen/melanoma-not-sent', () => {
  const code = 'specimen/melanoma-not-sent';
  const asked = (question: string, specimen: string, method = 'deep shave'): string =>
    note(['site: left upper back', `method: ${method}`, `question: ${question}`, `specimen: ${specimen}`]);

  it('flags the reason why tissue of a suspected melanoma was not sent', () => {
    flags(code, asked('rule out melanoma', '{not-sent: ⟦looked benign after all⟧}'), { severity: 'warning' });
    flags(code, asked('nevus vs melanoma', '⟦not sent, patient declined the cost⟧'));
  });

  it('is silent where it was sent, in part too, where melanoma is not suspected, and where no tissue was taken', () => {
    silent(code, asked('rule out melanoma', '{label: A, medium: formalin}'));
    silent(code, asked('rule out melanoma', '[{label: A}, {not-sent: fragment for culture dried out}]'));
    silent(code, asked('skin tag, no concern for melanoma', 'not sent, benign skin tag'));
    silent(code, asked('seborrheic keratosis', 'not sent, benign'));
    silent(code, asked('rule out melanoma', 'not sent, nothing taken', 'cryotherapy'));
  });
});
