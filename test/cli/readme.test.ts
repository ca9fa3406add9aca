import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { renewedPage, shownIn } from '../../src/build/readme.ts';

describe('pages that show what commands print', () => {
  for (const path of shownIn) {
    const text = readFileSync(path, 'utf8');

    // Two days, so that nothing shown depends on when the reader tries it.
    for (const today of ['2026-04-30', '2027-01-01'])
      it(`${basename(path)} shows what they print on ${today}`, async () => {
        assert.equal(await renewedPage(text, today), text, 'run npx tsx src/build/readme.ts');
      });

    it(`${basename(path)} shows more than one command`, () => {
      assert.ok([...text.matchAll(/^\$ npx wheal /gm)].length >= 3);
    });
  }
});

describe('README', () => {
  it('is short enough for a front page', () => {
    const [readme = ''] = shownIn;
    const words = readFileSync(readme, 'utf8')
      .split(/\s+/)
      .filter((word) => word !== '');
    assert.ok(words.length < 1400, `${words.length} words`);
  });
});
