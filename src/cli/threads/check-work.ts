import { resolve } from 'node:path';
import { DayDoses } from '../../dose/day-doses.ts';
import { ByPatient, chartNumbersIn } from '../../note/chart-numbers.ts';
import type { IsoDate } from '../../note/values/values.ts';
import { isPractice, load } from '../notes/files.ts';
import { checkFile } from '../notes/judge.ts';
import { tablesFor } from '../notes/notes.ts';
import { Practices } from '../notes/practices.ts';
import { reportForms, type Form } from '../report/forms.ts';
import type { Entry, Look } from '../report/report.ts';
import type { Pool } from './pool.ts';
import { portions } from './pool.ts';
import type { Work } from './work.ts';

const textOf = (path: string, cwd: string): string | undefined => {
  const loaded = load(resolve(cwd, path));
  return 'text' in loaded ? loaded.text : undefined;
};

/** What may be the chart numbers of each note; nothing for what can't be read. */
export const numbersWork: Work<readonly string[], readonly (readonly string[])[]> = {
  name: 'numbers',
  run: (paths, { cwd }) =>
    Promise.resolve(
      paths.map((path) => {
        const text = isPractice(path) ? undefined : textOf(path, cwd);
        return text === undefined ? [] : chartNumbersIn(text);
      }),
    ),
};

interface CheckJob {
  readonly paths: readonly string[];
  /** Every note that may share a patient with one of these, itself among them. */
  readonly related: readonly string[];
  readonly form: Form;
  readonly look: Look;
  readonly today: IsoDate;
}

/** What each file has to be reported. */
export const checkWork: Work<CheckJob, readonly Entry[]> = {
  name: 'check',
  async run({ paths, related, form, look, today }, console) {
    const practices = new Practices(console.cwd);
    const days = new DayDoses();
    for (const path of related) {
      const text = textOf(path, console.cwd);
      if (text !== undefined) days.read(path, text, tablesFor(path, practices));
    }
    const report = reportForms[form](look);
    const entries: Entry[] = [];
    for (const path of paths)
      entries.push(report.entry(await checkFile(path, today, console, practices, days)));
    return entries;
  },
};

/** Checks files in the threads of a pool; what is found is taken in the order of the paths. */
export async function checkInThreads(
  paths: readonly string[],
  how: Pick<CheckJob, 'form' | 'look' | 'today'>,
  pool: Pool,
  take: (entry: Entry) => void,
): Promise<void> {
  const byPatient = new ByPatient();
  const rest = [...paths];
  await pool.run(numbersWork, portions(paths), (numbers) => {
    for (const own of numbers) byPatient.setNumbers(rest.shift() ?? '', own);
  });
  const order = new Map([...byPatient.shared].map((path, at) => [path, at]));
  const jobs = portions(paths).map((some) => ({
    paths: some,
    related: [...byPatient.sharing(some)].sort((a, b) => (order.get(a) ?? 0) - (order.get(b) ?? 0)),
    ...how,
  }));
  await pool.run(checkWork, jobs, (entries) => {
    entries.forEach(take);
  });
}
