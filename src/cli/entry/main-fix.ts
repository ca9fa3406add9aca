import { commandLine, type Main } from './command-line.ts';
import { checkWith } from '../commands/check.ts';
import { fixer } from '../fixing/fixer.ts';
import { checkWork, numbersWork } from '../threads/check-work.ts';
import { serving } from '../threads/work.ts';

/** `wheal check --fix` alone: nothing else needs what finds fixes. */
export const main: Main = commandLine(new Map([['check', checkWith(fixer)]]));

/** What its threads do. */
export const serve = serving([numbersWork, checkWork]);
