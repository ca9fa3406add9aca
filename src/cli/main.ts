import { commandLine, type Main } from './command-line.ts';
import { commands } from './commands/index.ts';

/** The command `wheal`. */
export const main: Main = commandLine(commands);
