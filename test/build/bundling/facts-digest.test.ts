import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import type { Plugin } from 'esbuild';
import { factsDigest } from '../../../src/build/bundling/facts-digest.ts';

/** Changes one file on its way into the bundle. */
const changed = (file: RegExp, from: string, to: string): Plugin => ({
  name: 'changed',
  setup(build) {
    build.onLoad({ filter: file }, ({ path }) => {
      const text = readFileSync(path, 'utf8');
      assert.ok(text.includes(from), `${path} says ${from}`);
      return { contents: text.replace(from, to), loader: 'ts' };
    });
  },
});

describe('the digest under which facts of notes are kept', () => {
  it('is the same for the same code, and another for another table or rule', async () => {
    const before = await factsDigest();
    assert.equal(await factsDigest(), before);
    const table = await factsDigest([
      changed(/reference[\\/]suture-windows\.ts$/, 'lengtheningStep = 5', 'lengtheningStep = 6'),
    ]);
    const rule = await factsDigest([
      changed(/followup[\\/]results\.ts$/, "'telling the patient'", "'telling'"),
    ]);
    assert.equal(new Set([before, table, rule]).size, 3);
  });
});
