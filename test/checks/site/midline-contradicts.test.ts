import { flags, silent } from '../tester.ts';
import { one } from './_site.ts';

describe('site/midline-contradicts', () => {
  const code = 'site/midline-contradicts';

  it('flags landmarks beside the midline', () => {
    flags(code, one('midline upper back', '    landmarks: 4 cm ⟦left of midline⟧, 9 cm below C7\n'), {
      severity: 'warning',
    });
    flags(code, one('upper back, midline', '    landmarks: 9 cm below C7, 3 cm ⟦right of the spine⟧\n'));
    flags(code, one('midline upper back', '    landmarks: 2 cm ⟦right from midline⟧\n'));
    flags(code, one('midline abdomen', '    landmarks: ⟦lt side⟧, 2 cm below the umbilicus\n'));
    flags(code, one('abdomen, midline', '    landmarks: 2 cm ⟦left of the umbilicus⟧\n'));
  });

  it('is silent where the landmarks lie in the midline or measure from both sides, and where "mid" may be a height', () => {
    silent(code, one('midline upper back', '    landmarks: 9 cm below C7\n'));
    silent(code, one('midline upper back', '    landmarks: 10 cm from left and right scapula\n'));
    silent(code, one('midline upper back', '    landmarks: left side of the scar is 2 cm away\n'));
    silent(code, one('midline chest', '    landmarks: 8 cm from the left nipple\n'));
    silent(code, one('mid back', '    landmarks: 4 cm left of midline\n'));
    silent(code, one('left upper back', '    landmarks: 4 cm left of midline\n'));
    silent(code, one('nasal tip', '    landmarks: 2 mm left of midline\n'));
  });
});
