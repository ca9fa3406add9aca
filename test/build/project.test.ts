import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { dirname } from 'node:path';

/** Folders in which each file is a row of one catalogue: a table of reference, a check of a family, or its test. */
const isCatalogue = (folder: string): boolean =>
  folder === 'src/reference' || /^(?:src|test)\/checks\/(?!running$)[^/]+$/.test(folder);

/** Files of code by folder: the pages of checks are beside their checks, and notes are no code. */
function codeFiles(): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const top of ['src', 'test'])
    for (const name of readdirSync(top, { recursive: true, encoding: 'utf8' })) {
      if (!/\.[cm]?[jt]s$/.test(name)) continue;
      const folder = dirname(`${top}/${name.replaceAll('\\', '/')}`);
      counts.set(folder, (counts.get(folder) ?? 0) + 1);
    }
  return counts;
}

describe('the project', () => {
  for (const file of ['package.json', 'test/host/package.json'])
    it(`names exactly one version of each package: ${file}`, () => {
      const manifest = JSON.parse(readFileSync(file, 'utf8')) as Record<string, unknown>;
      const versions = ['dependencies', 'devDependencies', 'optionalDependencies'].flatMap((kind) =>
        Object.entries((manifest[kind] ?? {}) as Record<string, string>),
      );
      assert.ok(versions.length > 0);
      assert.deepEqual(
        versions.filter(([, version]) => !/^\d+\.\d+\.\d+(?:-[\w.]+)?$/.test(version)),
        [],
      );
    });

  it('has at most 20 files of code in a folder, but for catalogues; make a room with a meaning of its own', () => {
    const counts = codeFiles();
    assert.ok(counts.size > 50);
    assert.deepEqual(
      [...counts].filter(([folder, count]) => count > 20 && !isCatalogue(folder)),
      [],
    );
  });

  it('runs in CI exactly what the README names for tests', () => {
    const [, start, test] =
      /```sh\n(npm \S+) .*\n(npm \S+) .*\n```/.exec(readFileSync('README.md', 'utf8')) ?? [];
    assert.deepEqual([start, test], ['npm start', 'npm test']);
    const rows = readFileSync('.ci/run', 'utf8').trim().split('\n');
    assert.deepEqual(rows.slice(1), ['set -euo pipefail', 'cd "$(dirname "$0")/.."', test]);
  });
});
