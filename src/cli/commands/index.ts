import { check } from './check.ts';
import type { Command } from './command.ts';

export const commands: ReadonlyMap<string, Command> = new Map([['check', check]]);
