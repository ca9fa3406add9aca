import { flags, silent } from '../tester.ts';
import { one } from './_site.ts';

describe('site/digit-not-named', () => {
  const code = 'site/digit-not-named';

  it('flags a finger, a toe or a nail without its name', () => {
    for (const site of ['⟦left finger⟧', '⟦right toe, dorsal⟧', '⟦left fingertip⟧', '⟦right toenail⟧'])
      flags(code, one(site), { severity: 'information' });
    flags(code, one('⟦right toe⟧', '    landmarks: 2 cm below the nail fold\n'));
  });

  it('is silent where the digit is named, in the site or beside it', () => {
    for (const site of [
      'left index finger',
      'right third toe',
      'left thumb',
      'right great toe',
      'left finger, 3rd',
      'left ring finger nail',
      'right foot',
      'finger web, left hand',
    ])
      silent(code, one(site));
    silent(code, one('left finger', '    landmarks: ring finger, 1 cm above the nail fold\n'));
    silent(code, one('right toe', '    lesion: black macule of digit 4\n'));
    silent(code, one('right toe', '    same-as: A\n'));
  });
});
