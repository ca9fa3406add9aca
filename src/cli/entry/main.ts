import { commandLine, type Main } from './command-line.ts';
import { checkWith } from '../commands/check.ts';
import { commandsWith } from '../commands/index.ts';
import { fixer } from '../fixing/fixer.ts';

/** The commands by the name that is typed, in the order of the help. */
export const commands = commandsWith(checkWith(fixer));

/** The command `wheal`, all of it; the bundles hold parts. */
export const main: Main = commandLine(commands);
