import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, posix } from 'node:path';

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

/** A folder below a floor is one room; a file at the top of a floor means itself. */
const roomOf = (file: string): string => (file.split('/').length > 3 ? dirname(file) : file);

/** What each room imports, by the imports of its files that are written by hand. */
function houseGraph(): ReadonlyMap<string, ReadonlySet<string>> {
  const graph = new Map<string, Set<string>>();
  for (const name of readdirSync('src', { recursive: true, encoding: 'utf8' })) {
    if (!name.endsWith('.ts') || name.includes('generated')) continue;
    const file = `src/${name.replaceAll('\\', '/')}`;
    const room = roomOf(file);
    const all = graph.get(room) ?? new Set();
    graph.set(room, all);
    for (const [, path = ''] of readFileSync(file, 'utf8').matchAll(/ from '(\.{1,2}\/[^']+)';$/gm)) {
      const other = roomOf(posix.join(dirname(file), path));
      if (other !== room) all.add(other);
    }
  }
  return graph;
}

/** The rooms that are left when those are taken away, again and again, that import nothing that is left. */
function inCircles(graph: ReadonlyMap<string, ReadonlySet<string>>): readonly string[] {
  const left = new Map(graph);
  for (;;) {
    const free = [...left].filter(([, others]) => [...others].every((other) => !left.has(other)));
    if (free.length === 0) return [...left.keys()];
    for (const [room] of free) left.delete(room);
  }
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

  it('has no rooms that import each other in a circle', () => {
    const graph = houseGraph();
    assert.ok(graph.size > 100);
    assert.deepEqual(inCircles(graph), []);
    const circle = new Map(graph).set('src/checks/check.ts', new Set(['src/checks/dose']));
    assert.notDeepEqual(inCircles(circle), []);
  });

  it('runs in CI exactly what the README names for tests', () => {
    const [, start, test] =
      /```sh\n(npm \S+) .*\n(npm \S+) .*\n```/.exec(readFileSync('README.md', 'utf8')) ?? [];
    assert.deepEqual([start, test], ['npm start', 'npm test']);
    const rows = readFileSync('.ci/run', 'utf8').trim().split('\n');
    assert.deepEqual(rows.slice(1), ['set -euo pipefail', 'cd "$(dirname "$0")/.."', test]);
  });
});
