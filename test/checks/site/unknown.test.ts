import assert from 'node:assert/strict';
import { messageOf } from '../../../src/checks/index.ts';
import { fixed, flags, judgeBy, silent } from '../tester.ts';
import { one } from './_site.ts';

describe('site/unknown', () => {
  it('flags words that name no body site', () => {
    flags('site/unknown', one('⟦somewhere on the left⟧'), { severity: 'warning' });
    flags('site/unknown', one('⟦constructor⟧'));
    flags('site/unknown', one('⟦2 cm below the left ear⟧'));
  });

  it('offers the nearest site as one key', () => {
    const [finding] = flags('site/unknown', one('⟦left upper bakc⟧'));
    assert.ok(finding && messageOf(finding).includes('left upper back'));
    assert.equal(fixed('site/unknown', one('left upper bakc'), 'left upper back'), one('left upper back'));
    assert.equal(fixed('site/unknown', one('"left sholder"'), 'shoulder'), one('"left shoulder"'));
  });

  it('shows only the beginning of a long text', () => {
    const [finding] = judgeBy('site/unknown', one(`x${'y'.repeat(400)}`));
    assert.ok(finding && messageOf(finding).length < 300);
  });

  it('is silent where the site is known, not yet known, or missing', () => {
    silent('site/unknown', one('left upper back'));
    silent('site/unknown', one('??'));
    silent('site/unknown', 'visit: 2026-03-02\nprocedures:\n  - method: punch\n');
  });
});
