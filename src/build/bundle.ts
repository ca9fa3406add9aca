/** Bundles the command line and the extension into dist/. */
import { chmodSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { build, type BuildOptions } from 'esbuild';
import { generate } from './generate.ts';

const root = join(import.meta.dirname, '..', '..');
const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };

const shared: BuildOptions = {
  absWorkingDir: root,
  bundle: true,
  minify: true,
  legalComments: 'none',
  logLevel: 'warning',
  define: { WHEAL_VERSION: JSON.stringify(version) },
  // Neutral, so that packages give their ES modules and unused parts fall away.
  platform: 'neutral',
  mainFields: ['module', 'main'],
  external: ['node:*', 'vscode'],
  format: 'cjs',
};

generate();
await build({
  ...shared,
  entryPoints: ['src/cli/wheal.ts'],
  target: 'node20',
  outfile: 'dist/wheal.cjs',
  banner: { js: '#!/usr/bin/env node' },
});
chmodSync(join(root, 'dist/wheal.cjs'), 0o755);

await build({
  ...shared,
  entryPoints: ['src/editor/extension.ts'],
  target: 'es2022',
  outfile: 'dist/extension.cjs',
});

await build({
  ...shared,
  entryPoints: ['test/bench/subject.ts'],
  target: 'node20',
  outfile: 'dist/bench-subject.cjs',
});
