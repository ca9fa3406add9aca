import { commandLine, type Main } from './command-line.ts';
import { checkWith } from '../commands/check.ts';
import { commandsWith } from '../commands/index.ts';
import { factsWork, scheduleWork, specimensWork } from '../threads/list-work.ts';
import { serving } from '../threads/work.ts';

/** Every command but `check --fix`. */
export const main: Main = commandLine(commandsWith(checkWith()));

/** What its threads do. */
export const serve = serving([factsWork, scheduleWork, specimensWork]);
