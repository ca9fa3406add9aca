import { flags, silent } from '../tester.ts';
import { note } from './_method.ts';

describe('method/smaller-than-lesion', () => {
  const code = 'method/smaller-than-lesion';
  const sized = (lesion: string, size: string, method = 'excisional'): string =>
    note(method, `lesion: ${lesion}\n    size: ${size}`);

  it('flags the size of an excision that is less than its lesion', () => {
    flags(code, sized('brown plaque 12 mm', '⟦8 x 4 mm⟧'), { severity: 'warning' });
    flags(code, sized('1.2 x 0.8 cm pearly plaque', '⟦10 x 5 mm⟧', 'ellipse'));
    flags(code, sized('nodule 12 mm, raised 3 mm', '⟦8 mm⟧'));
  });

  it('is silent where it is as large, of other methods, and of what is taken out through a smaller opening', () => {
    silent(code, sized('brown plaque 12 mm', '12 x 8 mm'));
    silent(code, sized('brown plaque 12 mm', '30 x 12 mm'));
    silent(code, sized('brown plaque 12 mm', '6 mm', 'punch'));
    silent(code, sized('brown plaque 12 mm', '8 x 4 mm', 'incisional'));
    silent(code, sized('mobile cyst 15 mm', '8 x 3 mm'));
    silent(code, sized('subcutaneous lipoma 30 mm', '15 mm'));
    silent(code, sized('papule 5 mm within a 30 mm scar', '8 x 6 mm'));
    silent(code, sized('papule 8 to 12 mm', '10 mm'));
    silent(code, sized('brown plaque', '8 mm'));
  });

  it('leaves an excision of a suspected melanoma to this check alone', () => {
    const text = note(
      'excisional',
      'lesion: brown macule 9 mm\n    question: rule out melanoma\n    size: 6 x 5 mm',
    );
    flags(code, text.replace('6 x 5 mm', '⟦6 x 5 mm⟧'));
    silent('method/melanoma-sample', text);
  });
});
