import { commandLine, type Main } from './command-line.ts';
import { checkWith } from './commands/check.ts';
import { commandsWith } from './commands/index.ts';

/** Every command but `check --fix`. */
export const main: Main = commandLine(commandsWith(checkWith()));
