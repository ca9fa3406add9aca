import assert from 'node:assert/strict';
import { messageOf } from '../../../src/checks/index.ts';
import { fixed, flags, silent } from '../tester.ts';
import { one } from './_site.ts';

describe('site/side-missing', () => {
  it('flags a site of which there are two', () => {
    flags('site/side-missing', one('⟦cheek⟧'), { severity: 'warning' });
    flags('site/side-missing', one('⟦dorsum of 3rd finger⟧'));
    flags('site/side-missing', one('⟦cheek, 2 cm below left eye⟧'));
    const [finding] = flags('site/side-missing', one('⟦upper back⟧'));
    assert.match(finding ? messageOf(finding) : '', /midline/);
  });

  it('puts a misspelt side right, and fills in none', () => {
    assert.equal(fixed('site/side-missing', one('lfet cheek'), 'left cheek'), one('left cheek'));
    assert.throws(() => fixed('site/side-missing', one('cheek'), 'left'));
  });

  it('is silent where a side is said, or none is needed', () => {
    for (const site of [
      'left cheek',
      'cheek, R',
      'bilateral cheeks',
      'upper back, midline',
      'central upper back',
      'glabella',
      'forehead',
      'nasal tip',
      'scalp, vertex',
      'left cheek right',
      '??',
    ])
      silent('site/side-missing', one(site));
  });
});
