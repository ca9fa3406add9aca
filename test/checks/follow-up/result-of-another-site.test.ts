import assert from 'node:assert/strict';
import { flags, judgeBy, silent } from '../tester.ts';

const code = 'follow-up/result-of-another-site';

const of = (site: string, diagnosis: string): string =>
  `visit: 2026-03-02\nprocedures:\n  - site: ${site}\n    specimen: {results: [{received: 2026-03-09, diagnosis: "${diagnosis}"}]}\n`;

/** Specimen A of the left cheek with a report, and B of the right ear. */
const labeled = (diagnosis: string, other = 'right ear'): string =>
  `visit: 2026-03-02\nprocedures:\n  - site: left cheek\n    specimen: {label: A, results: [{received: 2026-03-09, diagnosis: "${diagnosis}"}]}\n` +
  `  - site: ${other}\n    specimen: {label: B}\n`;

describe(code, () => {
  it('flags the other side, and another part of the body', () => {
    flags(code, of('left forearm', '⟦Skin, right forearm, shave⟧: nevus'), { severity: 'warning' });
    flags(code, of('left forearm', '⟦right arm⟧: nevus'));
    flags(code, of('left forearm', '⟦nevus, left thigh⟧'));
    flags(code, of('left upper back', '⟦left cheek⟧: basal cell carcinoma'));
  });

  it('flags a place in the ways that laboratories write it', () => {
    for (const head of [
      'cheek, right, shave',
      'R cheek',
      'Rt. cheek, shave biopsy',
      'SKIN, RIGHT CHEEK, PUNCH BIOPSY',
      'Skin of right cheek',
      '(R) cheek',
      'chest, excision',
      'Skin, back, upper, left',
    ])
      assert.equal(judgeBy(code, of('left cheek', `${head}: nevus`)).length, 1, head);
    assert.equal(judgeBy(code, of('left chest', 'Skin, mid back, punch - psoriasis')).length, 1);
  });

  it('flags the site of another specimen, although it lies close by', () => {
    flags(code, labeled('⟦Left temple, shave⟧: nevus', 'left temple'));
    silent(code, labeled('Left temple, shave: nevus'));
  });

  it('flags the other end of the same part', () => {
    flags(code, of('left upper back', '⟦Skin, back, left lower, shave⟧: nevus'));
    flags(code, of('lower eyelid, left', '⟦Left upper eyelid⟧: nevus'));
    flags(code, of('posterior neck', '⟦Neck, anterior, shave⟧: nevus'));
    silent(code, of('left upper calf', 'Left lower leg, shave: nevus'));
  });

  it('flags another label', () => {
    for (const text of [
      '⟦B⟧. Right ear, shave: nevus',
      '⟦B⟧. Basal cell carcinoma',
      '⟦B⟧) SKIN, NOS, PUNCH: nevus',
      'Specimen ⟦B⟧: nevus',
      'PART ⟦B⟧ - nevus',
      'Nevus, specimen ⟦B⟧',
      '⟦C⟧: Basal cell carcinoma',
      '⟦b⟧. right ear, shave: nevus',
    ])
      flags(code, labeled(text));
  });

  it('compares numbers where the clinic labels by numbers', () => {
    const numbered = (text: string): string =>
      labeled(text).replace('label: A', 'label: 1').replace('label: B', 'label: 2');
    flags(code, numbered('Container #⟦2⟧: nevus'));
    silent(code, numbered('Container #1: nevus'));
    silent(code, labeled('Container #2: nevus'));
  });

  it('reads of a report on several specimens what it says of its own', () => {
    silent(code, labeled('A. Left cheek, shave: nevus. B. Right ear, shave: basal cell carcinoma.'));
    flags(code, labeled('A. ⟦Right cheek, shave⟧: nevus. B. Right ear, shave: basal cell carcinoma.'));
    silent(code, labeled('Left cheek, shave: nevus; right ear, shave: basal cell carcinoma'));
  });

  it('takes no germ, side, list or comparison for a label', () => {
    for (const text of [
      'C. albicans isolated',
      'B. Globosa',
      'S. aureus, moderate growth',
      'L. cheek: nevus',
      'B-cell lymphoid infiltrate',
      'nevus, similar to specimen B',
      'nevus. See also part B',
      '1. nevus. 2. scar',
      'Grade A. nevus',
      'a. nevus',
    ])
      silent(code, labeled(text));
  });

  it('is silent about the same place in other words, and about what lies close by', () => {
    for (const [site, diagnosis] of [
      ['left forearm', 'Skin, left forearm, shave: nevus'],
      ['left forearm', 'left arm: nevus'],
      ['left upper arm', 'left shoulder: nevus'],
      ['left upper back', 'left shoulder: nevus'],
      ['left upper back', 'back: nevus'],
      ['left ear', 'Ear, left, superior helix: nevus'],
      ['left cheek', 'L cheek: nevus'],
      ['left cheek', 'Skin, face, shave: nevus'],
      ['left forearm', 'compound nevus'],
      ['left forearm', 'nevus with a junctional nest at the right edge'],
      ['left forearm', 'nevus; compare the previous sample of the right forearm'],
      ['left forearm', 'intradermal nevus of lip type'],
      ['left forearm', '??'],
      ['somewhere', 'right forearm: nevus'],
    ] as const)
      silent(code, of(site, diagnosis));
  });
});
