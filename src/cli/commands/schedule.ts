import { calendarOf } from '../../documents/calendar/calendar.ts';
import {
  calendarItems,
  scheduleJson,
  scheduleText,
  type NoteSchedule,
} from '../../documents/schedule/schedule.ts';
import { scheduleOf } from '../../followup/schedule.ts';
import type { IsoDate } from '../../note/values/values.ts';
import { referenceTables } from '../../practice/tables.ts';
import { choice, dateOption, readArguments, UsageError } from '../arguments.ts';
import type { Console } from '../console.ts';
import { filesOf } from '../files.ts';
import { readNotes } from '../notes.ts';
import { deliver } from '../output.ts';
import { Practices } from '../practices.ts';
import type { Command } from './command.ts';

type Form = (schedules: readonly NoteSchedule[], today: IsoDate, console: Console, name: string) => string;

const forms: Readonly<Record<'text' | 'json' | 'ics', Form>> = {
  text: scheduleText,
  json: scheduleJson,
  ics: (schedules, _, console, name) => calendarOf(calendarItems(schedules), { now: console.now(), name }),
};

export const schedule: Command = {
  usage: 'wheal schedule PATH… [--format text|json|ics] [--as-of DATE] [--out FILE]',
  about:
    'Says what falls due after each visit and when: stitches, results, telling, next steps, care at home.',
  async run(argv, console) {
    const given = readArguments(argv, ['format', 'as-of', 'out']);
    const format = choice(given, 'format', ['text', 'json', 'ics']);
    const today = dateOption(given, 'as-of', console.today);
    if (given.paths.length === 0) throw new UsageError('schedule needs a path');
    const paths = filesOf(given.paths, console.cwd);
    const practices = new Practices(console.cwd);
    const { notes, unread } = await readNotes(paths, console, practices);
    const schedules = notes.map(({ path, note, tables }) => ({
      path,
      note,
      ...scheduleOf(note, tables, today),
    }));
    const name = (notes[0]?.tables ?? referenceTables).practice.name;
    await deliver(forms[format](schedules, today, console, name), given.options.get('out'), console);
    return unread > 0 ? 1 : 0;
  },
};
