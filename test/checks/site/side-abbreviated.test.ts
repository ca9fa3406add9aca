import assert from 'node:assert/strict';
import { fixed, flags, silent } from '../tester.ts';
import { one } from './_site.ts';

describe('site/side-abbreviated', () => {
  it('spells out letters, with one sure key', () => {
    flags('site/side-abbreviated', one('⟦R⟧ nasal ala'), { severity: 'information' });
    for (const [typed, written] of [
      ['R nasal ala', 'right nasal ala'],
      ['L. cheek', 'left cheek'],
      ['cheek (Lt.)', 'cheek (left)'],
      ['"dorsum of rt hand"', '"dorsum of right hand"'],
      ['B/L forearms', 'bilateral forearms'],
    ] as const)
      assert.equal(fixed('site/side-abbreviated', one(typed), 'Write'), one(written));
  });

  it('is silent for words', () => {
    silent('site/side-abbreviated', one('left cheek, 2 cm from L ear'));
    silent('site/side-abbreviated', one('bilateral cheeks'));
  });
});
