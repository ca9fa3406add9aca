import assert from 'node:assert/strict';
import { mkdtempSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import { readSite } from '../../src/note/words/site.ts';
import { siteIndexText } from '../../src/note/words/site-words.ts';
import { WordTable } from '../../src/note/words/word-table.ts';
import { sites } from '../../src/reference/sites.ts';

/** A bundle carries the index of the sites; code that is not bundled makes it. */
describe('the index of the sites in a bundle', () => {
  const folder = mkdtempSync(join(tmpdir(), 'wheal-index-'));
  after(() => {
    rmSync(folder, { recursive: true, force: true });
  });

  const bundled = async (index: string): Promise<typeof readSite> => {
    const outfile = join(folder, `${index.length}.cjs`);
    await build({
      stdin: {
        contents: `import { readSite } from './src/note/words/site.ts';
          import { WordTable } from './src/note/words/word-table.ts';
          import { sites } from './src/reference/sites.ts';
          const table = new WordTable(sites);
          exports.readSite = (text) => readSite(text, table);`,
        resolveDir: '.',
      },
      bundle: true,
      format: 'cjs',
      outfile,
      define: { WHEAL_SITE_INDEX: JSON.stringify(index) },
      logLevel: 'warning',
    });
    return (createRequire(import.meta.url)(outfile) as { readSite: typeof readSite }).readSite;
  };

  const table = new WordTable(sites);
  const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value ?? null));

  it('reads every name and synonym as the index that is made', async () => {
    const read = await bundled(siteIndexText());
    for (const { name, synonyms } of sites)
      for (const text of [name, `left ${name}s`, ...synonyms, `2 cm below the ${name}, right`])
        assert.deepEqual(plain(read(text, table)), plain(readSite(text, table)), text);
    assert.equal(read('nowhere at all', table), undefined);
  });

  it('is the one that is asked', async () => {
    const read = await bundled(JSON.stringify({ byPhrase: [], longest: 0, vocabulary: [] }));
    assert.equal(read('left upper back', table), undefined);
  });
});
