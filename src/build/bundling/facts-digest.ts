import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { build, type Plugin } from 'esbuild';

const root = join(import.meta.dirname, '..', '..', '..');

/**
 * A digest of all that the facts of a note follow from, beside the note and its practice: the code that reads and
 * plans, and its tables. Another number of a version is not needed for it to change.
 * @param plugins change what is bundled; only for tests
 */
export async function factsDigest(plugins: Plugin[] = []): Promise<string> {
  const { outputFiles } = await build({
    absWorkingDir: root,
    entryPoints: [
      'src/followup/caseload.ts',
      'src/followup/kept-facts.ts',
      'src/note/read.ts',
      'src/practice/tables.ts',
    ],
    bundle: true,
    minify: true,
    write: false,
    outdir: 'dist',
    platform: 'neutral',
    mainFields: ['module', 'main'],
    format: 'esm',
    logLevel: 'warning',
    plugins,
  });
  const hash = createHash('sha256');
  for (const { text } of outputFiles) hash.update(text).update('\n');
  return hash.digest('base64url');
}
