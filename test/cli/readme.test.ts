import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { readmePath, renewedReadme } from '../../src/build/readme.ts';

describe('README', () => {
  const text = readFileSync(readmePath, 'utf8');

  // Two days, so that nothing shown depends on when the reader tries it.
  for (const today of ['2026-04-30', '2027-01-01'])
    it(`shows what the commands print on ${today}`, async () => {
      assert.equal(await renewedReadme(text, today), text, 'run npx tsx src/build/readme.ts');
    });

  it('shows more than one command', () => {
    assert.ok([...text.matchAll(/^\$ npx wheal /gm)].length >= 3);
  });
});
