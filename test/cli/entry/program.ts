import { join } from 'node:path';
import { build, type BuildOptions } from 'esbuild';
import { buildCoreFile } from '../../../src/build/bundling/core-file.ts';
import { coreFile } from '../../../src/cli/entry/load-core.ts';

/** Bundles the command line into a folder, as `wheal.cjs` and what it loads; dist/ may be old or missing. */
export async function buildProgram(folder: string): Promise<void> {
  const options: BuildOptions = {
    bundle: true,
    platform: 'neutral',
    mainFields: ['module', 'main'],
    external: ['node:*'],
    format: 'cjs',
    logLevel: 'warning',
  };
  const entry = 'src/cli/entry';
  for (const [name, file] of Object.entries({ wheal: 'wheal.cjs', worker: 'wheal-worker.cjs' }))
    await build({ ...options, entryPoints: [`${entry}/${name}.ts`], outfile: join(folder, file) });
  await buildCoreFile(options, `${entry}/main-core.ts`, join(folder, coreFile('wheal-core')));
  await buildCoreFile(options, `${entry}/main-check.ts`, join(folder, coreFile('wheal-check')));
  await buildCoreFile(options, `${entry}/main-fix.ts`, join(folder, coreFile('wheal-fix')));
}
