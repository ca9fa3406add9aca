import type { Console } from '../console.ts';
import { check } from './check.ts';

export interface Command {
  readonly usage: string;
  readonly about: string;
  readonly run: (argv: readonly string[], console: Console) => Promise<number>;
}

export const commands: ReadonlyMap<string, Command> = new Map([['check', check]]);
