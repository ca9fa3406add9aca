import type { Console } from '../terminal/console.ts';

/** Something that is done with some notes, in any thread: it takes and returns plain data. */
export interface Work<Job, Outcome> {
  readonly name: string;
  readonly run: (job: Job, console: Console) => Promise<Outcome>;
}

/** What a thread is asked. */
export interface Asked {
  readonly name: string;
  readonly job: unknown;
  /** Which job it is, from 0. */
  readonly at: number;
  readonly cwd: string;
}

/** What a thread answers; what it has to say on standard error is said in the order of the jobs. */
export interface Answered {
  readonly at: number;
  readonly outcome: unknown;
  readonly said: string;
}

/** Does what a thread is asked. */
export type Serve = (asked: Asked) => Promise<Answered>;

// Whoever sends a job has the work at hand, so that its types are those of the job.
type AnyWork = Work<never, unknown>;

/** Does one of some works. */
export const serving =
  (works: readonly AnyWork[]): Serve =>
  async ({ name, job, at, cwd }) => {
    const work = works.find((one) => one.name === name);
    if (work === undefined) throw new Error(`no thread knows how to do ${name}`);
    let said = '';
    const console: Console = {
      write: () => undefined,
      error: (text) => {
        said += text;
      },
      color: false,
      errorIsTerminal: false,
      readInput: () => Promise.reject(new Error('threads read no input')),
      today: () => '',
      now: () => new Date(0),
      cwd,
    };
    return { at, outcome: await work.run(job as never, console), said };
  };
