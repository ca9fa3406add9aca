import { readdir, readFile, stat } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { UsageError } from './arguments.ts';

const suffix = '.wheal.yaml';

/**
 * The notes that paths mean: a file itself, a folder every note below it, in the order of names.
 * @throws UsageError where there is no such path or no note in it
 */
export async function notePaths(paths: readonly string[], cwd: string): Promise<readonly string[]> {
  const found: string[] = [];
  for (const path of paths) {
    const info = await stat(resolve(cwd, path)).catch(() => undefined);
    if (info === undefined) throw new UsageError(`there is no file or folder ${path}`);
    if (!info.isDirectory()) found.push(path);
    else {
      const names = await readdir(resolve(cwd, path), { recursive: true });
      found.push(
        ...names
          .filter((name) => name.endsWith(suffix) && !name.endsWith(`practice${suffix}`))
          .sort()
          .map((name) => join(path, name)),
      );
    }
  }
  if (found.length === 0) throw new UsageError(`there is no note (*${suffix}) in ${paths.join(', ')}`);
  return found;
}

export function readText(path: string): Promise<string> {
  return readFile(path, 'utf8');
}
