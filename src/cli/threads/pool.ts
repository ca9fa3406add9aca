import type { Worker } from 'node:worker_threads';
import { UsageError, type Arguments } from '../options/arguments.ts';
import type { Console } from '../terminal/console.ts';
import { isInput } from '../notes/files.ts';
import type { Option } from '../options/options.ts';
import type { Answered, Asked, Work } from './work.ts';

export const threadsOption: Option = {
  name: 'threads',
  value: 'NUMBER',
  about: 'How many processors read notes at once: all that the machine has for many notes, otherwise 1.',
};

/** From how many notes on it is worth starting threads. */
const many = 400;
const mostThreads = 8;
/** Notes in one job: few enough that all threads end together, many enough that asking costs little. */
const jobSize = 50;
/** Jobs that are under way or done, and not yet taken, for each thread: they wait in memory. */
const ahead = 4;

/**
 * How many threads are to read some notes; 1 means none beside this one.
 * @throws UsageError for what is no number of threads
 */
export async function threadsFor(
  { options }: Arguments,
  paths: readonly string[],
  console: Console,
): Promise<number> {
  const asked = options.get(threadsOption.name);
  if (asked !== undefined && !/^[1-9]\d?$/.test(asked))
    throw new UsageError(`--${threadsOption.name} is a number from 1 to 99; "${asked}" is not`);
  if (console.threadFile === undefined || paths.some((path) => isInput(path, console))) return 1;
  if (asked !== undefined) return Number(asked);
  if (paths.length < many) return 1;
  const { availableParallelism } = await import('node:os');
  return Math.min(availableParallelism(), mostThreads);
}

/** Paths in portions for threads. */
export const portions = (paths: readonly string[]): readonly (readonly string[])[] =>
  Array.from({ length: Math.ceil(paths.length / jobSize) }, (_, at) =>
    paths.slice(at * jobSize, (at + 1) * jobSize),
  );

/** Threads that do jobs; what comes of them is taken in the order of the jobs, whoever is ready first. */
export class Pool {
  private constructor(
    private readonly workers: readonly Worker[],
    private readonly console: Console,
  ) {}

  static async of(threads: number, console: Console): Promise<Pool> {
    const { Worker } = await import('node:worker_threads');
    const file = console.threadFile ?? '';
    const workers = Array.from(
      { length: threads },
      () =>
        new Worker(file, { argv: process.argv.slice(2), resourceLimits: { maxYoungGenerationSizeMb: 24 } }),
    );
    return new Pool(workers, console);
  }

  /** Does a work for each job. @throws Error what a thread failed with */
  async run<Job, Outcome>(
    { name }: Work<Job, Outcome>,
    jobs: readonly Job[],
    take: (outcome: Outcome) => void,
  ): Promise<void> {
    const ready = new Map<number, Answered>();
    let next = 0;
    let taken = 0;
    const idle = new Set(this.workers);
    const feed = (): void => {
      for (const worker of idle) {
        if (next === jobs.length || next - taken >= this.workers.length * ahead) return;
        const asked: Asked = { name, job: jobs[next], at: next, cwd: this.console.cwd };
        worker.postMessage(asked);
        next += 1;
        idle.delete(worker);
      }
    };
    const takeReady = (): void => {
      for (let one = ready.get(taken); one !== undefined; one = ready.get(taken)) {
        ready.delete(taken);
        taken += 1;
        if (one.said !== '') this.console.error(one.said);
        take(one.outcome as Outcome);
      }
    };
    await new Promise<void>((resolve, reject) => {
      if (jobs.length === 0) resolve();
      for (const worker of this.workers)
        worker.on('error', reject).on('message', (answered: Answered) => {
          ready.set(answered.at, answered);
          idle.add(worker);
          takeReady();
          feed();
          if (taken === jobs.length) resolve();
        });
      feed();
    });
    for (const worker of this.workers) worker.removeAllListeners('message').removeAllListeners('error');
  }

  async end(): Promise<void> {
    await Promise.all(this.workers.map((worker) => worker.terminate()));
  }
}
