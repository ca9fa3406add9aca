import type { Arguments } from './arguments.ts';
import type { Console } from '../terminal/console.ts';
import type { Option } from './options.ts';

/** One command of the command line. */
export interface Command {
  /** What is named beside the options: PATH…, NOTE or SHELL; empty for nothing. */
  readonly takes: '' | 'NOTE' | 'TEXT' | 'PATH…' | 'SHELL';
  readonly options: readonly Option[];
  /** What it does, in one or two sentences. */
  readonly about: string;
  /** Runs it with what was typed and returns the exit code. @throws UsageError */
  readonly run: (given: Arguments, console: Console) => Promise<number>;
}
