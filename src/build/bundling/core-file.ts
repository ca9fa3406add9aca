import { readFileSync, writeFileSync } from 'node:fs';
import { build, type BuildOptions } from 'esbuild';
import { wrapping } from '../../cli/entry/load-core.ts';

/** Bundles a part of the command line as `loadCore` wants it: a function, in plain ASCII, which is read in a third of the time. */
export async function buildCoreFile(options: BuildOptions, entry: string, outfile: string): Promise<void> {
  await build({
    ...options,
    entryPoints: [entry],
    outfile,
    // What runs as a script of its own may not import later; it requires.
    supported: { 'dynamic-import': false },
    banner: { js: wrapping.before },
    footer: { js: wrapping.after },
  });
  // esbuild leaves what patterns hold beyond ASCII.
  writeFileSync(outfile, readFileSync(outfile, 'utf8').replace(/[\u0080-\uffff]/g, escaped));
}

const escaped = (sign: string): string => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`;
