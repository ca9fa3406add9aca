import { logFormats, specimenLog } from '../../documents/specimens/log.ts';
import { dateOption, formatOption, UsageError } from '../arguments.ts';
import { filesOf } from '../files.ts';
import { readNotes } from '../notes.ts';
import { Practices } from '../practices.ts';
import { formatOf } from '../options.ts';
import type { Command } from './command.ts';

export const specimens: Command = {
  takes: 'PATH…',
  options: [
    formatOf(Object.keys(logFormats)),
    { name: 'on', value: 'DATE', about: 'The day of the log, and not today.' },
  ],
  about:
    'Lists the specimens taken on a day, today where none is named, against what was sent, and counts methods and codes.',
  async run(given, console) {
    const format = formatOption(given, logFormats);
    const on = dateOption(given, 'on', console.today);
    if (given.paths.length === 0) throw new UsageError('specimens needs a path');
    const paths = filesOf(given.paths, console.cwd);
    const { notes, notRead } = await readNotes(paths, console, new Practices(console.cwd));
    console.write(logFormats[format].write(specimenLog(notes, on, notRead)));
    return notRead.length > 0 ? 1 : 0;
  },
};
