import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';

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

  it('runs in CI exactly what the README names for tests', () => {
    const [, start, test] =
      /```sh\n(npm \S+) .*\n(npm \S+) .*\n```/.exec(readFileSync('README.md', 'utf8')) ?? [];
    assert.deepEqual([start, test], ['npm start', 'npm test']);
    const rows = readFileSync('.ci/run', 'utf8').trim().split('\n');
    assert.deepEqual(rows.slice(1), ['set -euo pipefail', 'cd "$(dirname "$0")/.."', test]);
  });
});
