import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { caution } from '../../src/documents/caution.ts';
import { catalogue } from '../../src/checks/index.ts';

const root = join(import.meta.dirname, '..', '..');
const flat = (file: string): string => readFileSync(join(root, file), 'utf8').replace(/\s+/g, ' ');

describe('the caution', () => {
  for (const file of ['README.md', 'src/build/start.mjs', 'src/editor/walkthrough/help.md'])
    it(`is the same sentence in ${file}`, () => {
      assert.ok(flat(file).includes(caution));
    });

  it('is on the page of every check', () => {
    const without = catalogue.filter(({ code }) => !flat(`src/checks/${code}.md`).includes(caution));
    assert.deepEqual(
      without.map(({ code }) => code),
      [],
    );
  });
});
