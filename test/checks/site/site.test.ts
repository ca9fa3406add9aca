import { flags, silent } from '../tester.ts';

describe('the side in other texts of a procedure', () => {
  const code = 'site/side-contradicts';
  const of = (site: string, ...rows: readonly string[]): string =>
    `visit: 2026-03-02\nprocedures:\n  - site: ${site}\n${rows.map((row) => `    ${row}\n`).join('')}`;

  it('is compared where they name the same place', () => {
    flags(code, of('left upper back', 'lesion: brown macule on ⟦right upper back⟧'), { severity: 'warning' });
    flags(code, of('left upper back', 'question: "nevus, ⟦right upper back⟧, r/o atypia"'));
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
