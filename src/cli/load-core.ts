import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { Script } from 'node:vm';

/** Name of the bundle that holds everything but the process, and of what Node has compiled of it. */
export const coreFile = 'wheal-core.cjs';
export const compiledFile = 'wheal-core.compiled';

type Core = typeof import('./main.ts');
type Wrapped = (exports: object, require: NodeJS.Require, module: { exports: object }) => void;

/** The bundle as a script; `compiled` spares compiling it where this Node is the one that made it. */
export function coreScript(folder: string, compiled: Buffer | undefined): Script {
  const filename = join(folder, coreFile);
  // The bundle is plain ASCII, which is read quickest in this encoding.
  const source = readFileSync(filename, 'latin1');
  return new Script(`(function (exports, require, module) {${source}\n})`, {
    filename,
    ...(compiled === undefined ? {} : { cachedData: compiled }),
  });
}

/** Runs the bundle's script and answers what it exports. */
export function coreOf(script: Script, folder: string): Core {
  const module = { exports: {} };
  (script.runInThisContext() as Wrapped)(module.exports, createRequire(join(folder, coreFile)), module);
  return module.exports as Core;
}

/** Loads the bundled core from the folder in which it lies. */
export function loadCore(folder: string): Core {
  return coreOf(coreScript(folder, compiledIn(folder)), folder);
}

function compiledIn(folder: string): Buffer | undefined {
  try {
    return readFileSync(join(folder, compiledFile));
  } catch {
    // Without it the core is compiled as any other file.
    return undefined;
  }
}
