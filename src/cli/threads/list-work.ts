import { scheduledOf, type NoteSchedule } from '../../documents/schedule/index.ts';
import type { NotRead } from '../../documents/not-read.ts';
import { specimenLog, type SpecimenLog } from '../../documents/specimens/log.ts';
import type { NoteFacts } from '../../followup/caseload.ts';
import { scheduleOf } from '../../followup/schedule.ts';
import type { IsoDate } from '../../note/values/values.ts';
import type { Arguments } from '../options/arguments.ts';
import type { Console } from '../terminal/console.ts';
import { factsIn } from '../notes/facts.ts';
import { loadFrom, readEach, tablesFor } from '../notes/notes.ts';
import { Practices } from '../notes/practices.ts';
import { Pool, portions, threadsFor } from './pool.ts';
import type { Work } from './work.ts';

/** Notes, and the day for which something is asked of them. */
interface DayJob {
  readonly paths: readonly string[];
  readonly day: IsoDate;
}

/** Does a work of a day for all paths, in threads where that is worth it. */
export async function dayWork<Outcome>(
  work: Work<DayJob, Outcome>,
  given: Arguments,
  paths: readonly string[],
  day: IsoDate,
  console: Console,
  take: (outcome: Outcome) => void,
): Promise<void> {
  const threads = await threadsFor(given, paths, console);
  // In portions in any case, so that no more notes than those of one are in memory.
  const jobs = portions(paths).map((some) => ({ paths: some, day }));
  if (threads === 1) {
    for (const job of jobs) take(await work.run(job, console));
    return;
  }
  const pool = await Pool.of(threads, console);
  await pool.run(work, jobs, take);
  await pool.end();
}

/** The facts of each note. */
export const factsWork: Work<readonly string[], readonly NoteFacts[]> = {
  name: 'facts',
  async run(paths, console) {
    const practices = new Practices(console.cwd);
    const facts: NoteFacts[] = [];
    for (const path of paths) facts.push(factsIn(await loadFrom(path, console), tablesFor(path, practices)));
    return facts;
  },
};

/** The facts of notes, read in threads and taken in the order of the paths. */
export async function factsInThreads(
  paths: readonly string[],
  threads: number,
  console: Console,
  take: (path: string, facts: NoteFacts) => void,
): Promise<void> {
  const pool = await Pool.of(threads, console);
  let at = 0;
  await pool.run(factsWork, portions(paths), (some) => {
    for (const facts of some) take(paths[at++] ?? '', facts);
  });
  await pool.end();
}

interface Schedules {
  readonly schedules: readonly NoteSchedule[];
  readonly notRead: readonly NotRead[];
}

/** What falls due after each visit, as plain data. */
export const scheduleWork: Work<DayJob, Schedules> = {
  name: 'schedule',
  async run({ paths, day }, console) {
    const { notes, notRead } = await readEach(paths, console, new Practices(console.cwd));
    const schedules = notes.map(({ path, note, tables }) =>
      scheduledOf({ path, note, ...scheduleOf(note, tables, day) }),
    );
    return { schedules, notRead };
  },
};

/** The specimens of one day. */
export const specimensWork: Work<DayJob, SpecimenLog> = {
  name: 'specimens',
  async run({ paths, day }, console) {
    const { notes, notRead } = await readEach(paths, console, new Practices(console.cwd));
    return specimenLog(notes, day, notRead);
  },
};
