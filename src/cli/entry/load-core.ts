import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Script } from 'node:vm';

/** The bundles that hold everything but the process: all commands, only the one that is run most, or that with its fixes. */
export type Bundle = 'wheal-core' | 'wheal-check' | 'wheal-fix';

const bundleFor = ([command, ...words]: readonly string[]): Bundle =>
  command !== 'check' ? 'wheal-core' : words.includes('--fix') ? 'wheal-fix' : 'wheal-check';

export const coreFile = (bundle: Bundle): string => `${bundle}.cjs`;

/** Name of what Node has compiled of a bundle. */
export const compiledFile = (bundle: Bundle): string => `${bundle}.compiled`;

type Core = typeof import('./main-core.ts');
type Wrapped = (exports: object, require: NodeJS.Require, module: { exports: object }) => void;

/** What a bundle is in, on disk already: put around it at each start, its text would be copied. */
export const wrapping = { before: '(function (exports, require, module) {', after: '})' } as const;

/** The bundle as a script; `compiled` spares compiling it where this Node is the one that made it. */
export function coreScript(folder: string, bundle: Bundle, compiled: Buffer | undefined): Script {
  const filename = join(folder, coreFile(bundle));
  // In plain ASCII; read as UTF-8 it takes three times as long.
  const source = readFileSync(filename, 'latin1');
  return new Script(source, {
    filename,
    ...(compiled === undefined ? {} : { cachedData: compiled }),
  });
}

/** Runs the bundle's script and answers what it exports. `require` gives it the modules of Node. */
export function coreOf(script: Script, require: NodeJS.Require): Core {
  const module = { exports: {} };
  (script.runInThisContext() as Wrapped)(module.exports, require, module);
  return module.exports as Core;
}

/** Loads what a command line needs from the folder in which it is. */
export function loadCore(folder: string, argv: readonly string[], require: NodeJS.Require): Core {
  const bundle = bundleFor(argv);
  return coreOf(coreScript(folder, bundle, compiledIn(folder, bundle)), require);
}

function compiledIn(folder: string, bundle: Bundle): Buffer | undefined {
  try {
    return readFileSync(join(folder, compiledFile(bundle)));
  } catch {
    // Without it the core is compiled as any other file.
    return undefined;
  }
}
