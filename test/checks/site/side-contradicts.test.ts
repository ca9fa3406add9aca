import assert from 'node:assert/strict';
import { flags, silent } from '../tester.ts';
import { one } from './_site.ts';

describe('site/side-contradicts', () => {
  it('flags the second of two sides, and points at the first', () => {
    const [finding] = flags('site/side-contradicts', one('left cheek, ⟦right⟧'), { severity: 'error' });
    assert.equal(finding?.related.length, 1);
    flags('site/side-contradicts', one('left upper back, 4 cm ⟦right⟧ of midline'));
    flags('site/side-contradicts', one('bilateral ⟦left⟧ forearm'));
  });

  it('flags landmarks on the other side of the midline', () => {
    flags(
      'site/side-contradicts',
      one('left upper back', '    landmarks: 4 cm ⟦right of the midline⟧, 9 cm below the hairline\n'),
      { severity: 'error' },
    );
    silent('site/side-contradicts', one('left upper back', '    landmarks: 4 cm left of midline\n'));
    silent('site/side-contradicts', one('left upper back', '    landmarks: 4 cm right of the tattoo\n'));
    silent('site/side-contradicts', one('left anterior thigh', '    landmarks: 2 cm right of its midline\n'));
    silent(
      'site/side-contradicts',
      one('left thigh', '    landmarks: 2 cm right of midline, 9 cm above the knee\n'),
    );
  });

  it('flags a side of what lies in the midline, as a warning', () => {
    flags('site/side-contradicts', one('⟦left⟧ umbilicus'), { severity: 'warning' });
    flags('site/side-contradicts', one('⟦both⟧ glabella'), { severity: 'warning' });
  });

  it('is silent where the side says what lies beside the midline, or belongs to a landmark', () => {
    for (const site of [
      'left of the glabella',
      'right side of umbilicus',
      'midline glabella',
      'left cheek, 2 cm below the right eye',
      'left and right forearms',
      'left nasal tip',
      'left chin',
      'left anterior thigh, 2 cm right of midline',
    ])
      silent('site/side-contradicts', one(site));
  });
});
