import { commandLine, exit, type Main } from './command-line.ts';
import { commands } from './commands/index.ts';

export { exit };

/** The command `wheal`. */
export const main: Main = commandLine(commands);
