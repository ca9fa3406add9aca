import { check } from './check.ts';
import { checks } from './checks.ts';
import { dose } from './dose.ts';
import { summary } from './summary.ts';
import type { Command } from './command.ts';

/** The commands by the name that is typed, in the order of the help. */
export const commands: ReadonlyMap<string, Command> = new Map([
  ['check', check],
  ['summary', summary],
  ['dose', dose],
  ['checks', checks],
]);
