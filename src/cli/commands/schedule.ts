import { resolve } from 'node:path';
import { scheduleFormats } from '../../documents/schedule/index.ts';
import { scheduleOf } from '../../followup/schedule.ts';
import { referenceTables } from '../../practice/tables.ts';
import { dateOption, formatOption, UsageError } from '../arguments.ts';
import type { Console } from '../console.ts';
import { filesOf, load } from '../files.ts';
import { readNotes } from '../notes.ts';
import { deliver } from '../output.ts';
import { Practices } from '../practices.ts';
import { asOf, formatOf, out } from '../options.ts';
import type { Command } from './command.ts';

export const schedule: Command = {
  takes: 'PATH…',
  options: [
    formatOf(Object.keys(scheduleFormats)),
    asOf,
    {
      name: 'replaces',
      value: 'OLD.ics',
      about: 'Takes out of the calendar of before what is done or gone; for --format ics.',
    },
    out,
  ],
  about:
    'Says what falls due after each visit and when: stitches, results, telling, next steps, care at home.',
  async run(given, console) {
    const format = formatOption(given, scheduleFormats);
    const today = dateOption(given, 'as-of', console.today);
    if (given.paths.length === 0) throw new UsageError('schedule needs a path');
    const paths = filesOf(given.paths, console.cwd);
    const practices = new Practices(console.cwd);
    const { notes, notRead } = await readNotes(paths, console, practices);
    const schedules = notes.map(({ path, note, tables }) => ({
      path,
      note,
      ...scheduleOf(note, tables, today),
    }));
    const name = (notes[0]?.tables ?? referenceTables).practice.name;
    const replaces = earlierCalendar(given.options.get('replaces'), format, console);
    const text = scheduleFormats[format].write(schedules, {
      today,
      now: console.now(),
      name,
      notRead,
      replaces,
    });
    if (text === '') console.error('wheal: nothing falls due, so no calendar was written\n');
    else await deliver(text, given.options.get('out'), console);
    return notRead.length > 0 ? 1 : 0;
  },
};

/** The text of the calendar that is replaced. @throws UsageError where it can't be read, or no calendar is written */
function earlierCalendar(path: string | undefined, format: string, console: Console): string | undefined {
  if (path === undefined) return undefined;
  if (format !== 'ics') throw new UsageError('--replaces goes with --format ics');
  const loaded = load(resolve(console.cwd, path), largestCalendar);
  if ('fault' in loaded) throw new UsageError(`${path} can't be read: ${loaded.fault.words}`);
  return loaded.text;
}

/** Bytes; a calendar of a whole practice is larger than a note. */
const largestCalendar = 64 * 1024 * 1024;
