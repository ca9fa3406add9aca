import { commandLine, type Main } from './command-line.ts';
import { checkWith } from '../commands/check.ts';
import { checkWork, numbersWork } from '../threads/check-work.ts';
import { serving } from '../threads/work.ts';

/** `wheal check` alone: it is run with every save and in every commit, and starts quicker without the others. */
export const main: Main = commandLine(new Map([['check', checkWith()]]));

/** What its threads do. */
export const serve = serving([numbersWork, checkWork]);
