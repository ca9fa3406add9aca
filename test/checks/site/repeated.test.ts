import assert from 'node:assert/strict';
import { flags, silent } from '../tester.ts';

const two = (first: string, second: string): string =>
  `visit: 2026-03-02\nprocedures:\n  - {site: ${first}}\n  - {site: ${second}}\n`;

describe('site/repeated', () => {
  it('flags the second of two procedures that nothing tells apart', () => {
    const [finding] = flags('site/repeated', two('left upper back', '⟦upper back (left)⟧'), {
      severity: 'information',
    });
    assert.equal(finding?.related.length, 1);
    flags(
      'site/repeated',
      two('left cheek, landmarks: 2 cm below the eye', '⟦left cheek⟧, landmarks: 2 cm below the eye'),
    );
  });

  it('takes landmarks within the site for a part of it', () => {
    flags('site/repeated', two("'left cheek, 2 cm below eye'", "⟦'left cheek, 2 cm below eye'⟧"));
  });

  it('is silent where site, landmarks or relation differ, or the note says that it is the same', () => {
    for (const [first, second] of [
      ['left upper back', 'right upper back'],
      ['left upper back', 'left upper back, same-as: A'],
      ['left cheek, landmarks: 2 cm below the eye', 'left cheek, landmarks: 3 cm from the ear'],
      ['left shin, relation: edge', 'left shin, relation: perilesional'],
      ['left forearm', 'left forearm distal'],
      ['left ring finger', 'left index finger'],
      ["'left cheek, 2 cm below the eye'", "'left cheek, 1 cm from the ear'"],
      ['??', '??'],
    ] as const)
      silent('site/repeated', two(first, second));
  });
});
