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

describe('the side in other texts of a procedure', () => {
  const code = 'site/side-contradicts';
  const of = (site: string, ...rows: readonly string[]): string =>
    `visit: 2026-03-02\nprocedures:\n  - site: ${site}\n${rows.map((row) => `    ${row}\n`).join('')}`;

  it('is compared where they name the same place', () => {
    flags(code, of('left upper back', 'lesion: brown macule on ⟦right upper back⟧'), { severity: 'warning' });
    flags(code, of('left upper back', 'question: "nevus, ⟦right upper back⟧, r/o atypia"'));
    flags(
      code,
      of('left upper back', 'specimen: {label: A, orientation: suture at tip on ⟦right upper back⟧}'),
    );
    flags(code, of('dorsum of right 3rd finger', 'lesion: wart of ⟦left 3rd finger⟧'));
    flags(code, of('left upper back', 'landmarks: 4 cm from ⟦midline on the right⟧'), { severity: 'error' });
  });

  it('may be another where they name another place, or another lesion', () => {
    for (const row of [
      'lesion: brown macule on left upper back',
      'lesion: similar macule on right upper back',
      'question: history of melanoma of the right upper back',
      'lesion: macule, new since treatment of right upper back',
      'lesion: macule with a bright right border',
      'lesion: macule right above a scar',
      'question: recurrence after excision on right forearm',
      'landmarks: 4 cm from midline',
      'landmarks: 4 cm left of the midline',
      'landmarks: 3 cm below the midline, to the right of the spine',
    ])
      silent(code, of('left upper back', row));
    silent(code, of('upper back', 'lesion: brown macule on right upper back'));
  });
});
