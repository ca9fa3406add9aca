import type { Console } from '../console.ts';

/** One command of the command line. */
export interface Command {
  /** How it is typed. */
  readonly usage: string;
  /** What it does, in one sentence. */
  readonly about: string;
  /** Runs it with the words behind its name and answers the exit code. @throws UsageError */
  readonly run: (argv: readonly string[], console: Console) => Promise<number>;
}
