import { flags, silent } from '../tester.ts';

const code = 'follow-up/result-of-another-site';

const of = (site: string, diagnosis: string): string =>
  `visit: 2026-03-02\nprocedures:\n  - site: ${site}\n    specimen: {results: [{received: 2026-03-09, diagnosis: "${diagnosis}"}]}\n`;

describe(code, () => {
  it('flags the other side, and another part of the body', () => {
    flags(code, of('left forearm', 'Skin, ⟦right forearm⟧, shave: nevus'), { severity: 'warning' });
    flags(code, of('left forearm', '⟦right arm⟧: nevus'));
    flags(code, of('left forearm', 'nevus, ⟦left thigh⟧'));
    flags(code, of('left upper back', '⟦left cheek⟧: basal cell carcinoma'));
  });

  it('is silent about the same place in other words, and about what lies close by', () => {
    for (const [site, diagnosis] of [
      ['left forearm', 'Skin, left forearm, shave: nevus'],
      ['left forearm', 'left arm: nevus'],
      ['left upper arm', 'left shoulder: nevus'],
      ['left upper back', 'left shoulder: nevus'],
      ['left upper back', 'back: nevus'],
      ['left forearm', 'compound nevus'],
      ['left forearm', 'nevus with a junctional nest at the right edge'],
      ['left forearm', 'nevus; compare the previous sample of the right forearm'],
      ['left forearm', '??'],
      ['somewhere', 'right forearm: nevus'],
    ] as const)
      silent(code, of(site, diagnosis));
  });
});
