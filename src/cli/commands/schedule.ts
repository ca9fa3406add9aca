import { resolve } from 'node:path';
import {
  scheduleData,
  scheduleFormats,
  type NoteSchedule,
  type Written,
} from '../../documents/schedule/index.ts';
import { referenceTables } from '../../practice/tables.ts';
import { dateOption, formatOption, UsageError } from '../options/arguments.ts';
import type { NotRead } from '../../documents/not-read.ts';
import type { Console } from '../terminal/console.ts';
import { filesOf, largestList, load } from '../notes/files.ts';
import { gapsSaid, tablesFor } from '../notes/notes.ts';
import { deliver } from '../notes/output.ts';
import { Practices } from '../notes/practices.ts';
import { asOf, formatOf, out } from '../options/options.ts';
import { remark } from '../terminal/remark.ts';
import { ndjsonOf } from '../report/ndjson.ts';
import { dayWork, scheduleWork } from '../threads/list-work.ts';
import { threadsOption } from '../threads/pool.ts';
import type { Command } from '../options/command.ts';

const { text, json, ics } = scheduleFormats;
const forms: Readonly<
  Record<'text' | 'json' | 'ndjson' | 'ics', (schedules: readonly NoteSchedule[], written: Written) => string>
> = {
  text: text.write,
  json: json.write,
  ndjson: (schedules, { today, notRead }) => ndjsonOf({ asOf: today }, scheduleData(schedules, notRead)),
  ics: ics.write,
};

export const schedule: Command = {
  takes: 'PATH…',
  options: [
    formatOf(Object.keys(forms)),
    asOf,
    {
      name: 'replaces',
      value: 'OLD.ics',
      about: 'Takes out of the calendar of before what is done or gone; for --format ics.',
    },
    threadsOption,
    out,
  ],
  about:
    'Says what falls due after each visit and when: stitches, results, telling, next steps, care at home.',
  async run(given, console) {
    const format = formatOption(given, forms);
    const today = dateOption(given, 'as-of', console.today);
    const paths = filesOf(given.paths, console);
    const practices = new Practices(console.cwd);
    const schedules: NoteSchedule[] = [];
    const notRead: NotRead[] = [];
    await dayWork(scheduleWork, given, paths, today, console, (some) => {
      schedules.push(...some.schedules);
      notRead.push(...some.notRead);
    });
    notRead.push(...gapsSaid(paths, console, practices));
    const first = schedules[0]?.path;
    const { name } = (first === undefined ? referenceTables : tablesFor(first, practices)).practice;
    const replaces = earlierCalendar(given.options.get('replaces'), format, console);
    const text = forms[format](schedules, {
      today,
      now: console.now(),
      name,
      notRead,
      replaces,
    });
    if (text === '') remark('nothing falls due, so no calendar was written', console);
    else await deliver(text, given.options.get('out'), console);
    return notRead.length > 0 ? 1 : 0;
  },
};

/** The text of the calendar that is replaced. @throws UsageError where it can't be read, or no calendar is written */
function earlierCalendar(path: string | undefined, format: string, console: Console): string | undefined {
  if (path === undefined) return undefined;
  if (format !== 'ics') throw new UsageError('--replaces goes with --format ics');
  const loaded = load(resolve(console.cwd, path), largestList);
  if ('fault' in loaded) throw new UsageError(`${path} can't be read: ${loaded.fault.words}`);
  return loaded.text;
}
