import { scheduleFormats } from '../../documents/schedule/index.ts';
import { scheduleOf } from '../../followup/schedule.ts';
import { referenceTables } from '../../practice/tables.ts';
import { dateOption, formatNames, formatOption, readArguments, UsageError } from '../arguments.ts';
import { filesOf } from '../files.ts';
import { readNotes } from '../notes.ts';
import { deliver } from '../output.ts';
import { Practices } from '../practices.ts';
import type { Command } from './command.ts';

export const schedule: Command = {
  usage: `wheal schedule PATH… ${formatNames(scheduleFormats)} [--as-of DATE] [--out FILE]`,
  about:
    'Says what falls due after each visit and when: stitches, results, telling, next steps, care at home.',
  async run(argv, console) {
    const given = readArguments(argv, ['format', 'as-of', 'out']);
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
    const text = scheduleFormats[format].write(schedules, { today, now: console.now(), name, notRead });
    await deliver(text, given.options.get('out'), console);
    return notRead.length > 0 ? 1 : 0;
  },
};
