import { commandLine, type Main } from './command-line.ts';
import { checkWith } from './commands/check.ts';
import { fixer } from './fixing/fixer.ts';

/** `wheal check --fix` alone: nothing else needs what finds fixes. */
export const main: Main = commandLine(new Map([['check', checkWith(fixer)]]));
