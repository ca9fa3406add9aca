/** Bundles the command line and the extension into dist/. */
import { chmodSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { build, type BuildOptions } from 'esbuild';
import { compiledFile, coreFile, coreOf, coreScript, type Bundle } from '../cli/entry/load-core.ts';
import { siteIndexText } from '../note/words/site-words.ts';
import { buildCoreFile } from './bundling/core-file.ts';
import { factsDigest } from './bundling/facts-digest.ts';
import { generate } from './generate.ts';
import { byHand } from './page-parts.ts';

const root = join(import.meta.dirname, '..', '..');
const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { version: string };

generate();

const versionOf = {
  WHEAL_VERSION: JSON.stringify(version),
  WHEAL_BUILD: JSON.stringify(await factsDigest()),
};

const shared: BuildOptions = {
  absWorkingDir: root,
  bundle: true,
  minify: true,
  legalComments: 'none',
  logLevel: 'warning',
  define: { ...versionOf, WHEAL_SITE_INDEX: JSON.stringify(siteIndexText()) },
  // Neutral, so that packages give their ES modules and unused parts fall away.
  platform: 'neutral',
  mainFields: ['module', 'main'],
  external: ['node:*', 'vscode'],
  format: 'cjs',
};

await build({
  ...shared,
  entryPoints: ['src/cli/entry/wheal.ts'],
  target: 'node20',
  outfile: 'dist/wheal.cjs',
  banner: { js: '#!/usr/bin/env node' },
});
chmodSync(join(root, 'dist/wheal.cjs'), 0o755);
await build({
  ...shared,
  entryPoints: ['src/cli/entry/worker.ts'],
  target: 'node20',
  outfile: 'dist/wheal-worker.cjs',
});
await buildCore('wheal-core', 'src/cli/entry/main-core.ts', ['check', 'summary']);
await buildCore('wheal-check', 'src/cli/entry/main-check.ts', ['check']);
await buildCore('wheal-fix', 'src/cli/entry/main-fix.ts', ['check']);

writeFileSync(join(root, 'dist', 'pages.json'), JSON.stringify(pagesOfChecks()));
await build({
  ...shared,
  // The index of sites is made when it is first asked: the package is smaller without it.
  define: { ...versionOf, WHEAL_SITE_INDEX: 'undefined' },
  charset: 'utf8',
  entryPoints: ['src/editor/extension.ts'],
  target: 'es2022',
  outfile: 'dist/extension.cjs',
});

// What runs inside of the panel, and how it looks.
await build({
  ...shared,
  entryPoints: ['src/editor/panel/client.ts', 'src/editor/panel/panel.css'],
  platform: 'browser',
  format: 'iife',
  target: 'es2022',
  entryNames: '[name]',
  outdir: 'dist',
});

await build({
  ...shared,
  entryPoints: ['test/bench/subject.ts'],
  target: 'node20',
  outfile: 'dist/bench-subject.cjs',
});
// The bench itself too, so that no translator of TypeScript shares the memory of what is measured.
await build({
  absWorkingDir: root,
  bundle: true,
  logLevel: 'warning',
  entryPoints: ['test/bench/bench.ts'],
  packages: 'external',
  platform: 'node',
  target: 'node20',
  format: 'esm',
  outfile: 'dist/bench/bench.mjs',
});

/**
 * Bundles a part of the command line, and keeps what Node compiles of it while some commands run, so that a start need
 * not do it again.
 */
async function buildCore(bundle: Bundle, entry: string, commands: readonly string[]): Promise<void> {
  const dist = join(root, 'dist');
  await buildCoreFile({ ...shared, target: 'node20' }, entry, join(dist, coreFile(bundle)));
  const script = coreScript(dist, bundle, undefined);
  const { main } = coreOf(script, createRequire(import.meta.url));
  const note = join(root, 'test', 'fixtures', 'design-example.wheal.yaml');
  for (const command of commands) {
    await main([command, note], {
      write: () => undefined,
      error: () => undefined,
      color: false,
      errorIsTerminal: false,
      readInput: () => Promise.resolve(new Uint8Array()),
      today: () => '2026-03-20',
      now: () => new Date(0),
      cache: undefined,
      cwd: root,
    });
  }
  writeFileSync(join(dist, compiledFile(bundle)), script.createCachedData());
}

/**
 * What is written by hand on each page, by the code of its check; what is above it, the extension writes from the check.
 * In one file they take half the room that they take one by one in a package.
 */
function pagesOfChecks(): Readonly<Record<string, string>> {
  const folder = join(root, 'src', 'checks');
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.md'),
  );
  return Object.fromEntries(
    names.map((name) => [
      name.slice(0, -'.md'.length).replaceAll('\\', '/'),
      byHand(readFileSync(join(folder, name), 'utf8')),
    ]),
  );
}
