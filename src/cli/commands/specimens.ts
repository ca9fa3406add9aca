import {
  logData,
  logFormats,
  logsTogether,
  specimenLog,
  type SpecimenLog,
} from '../../documents/specimens/log.ts';
import { dateOption, formatOption } from '../options/arguments.ts';
import type { CsvLook } from '../../documents/csv.ts';
import { csvLook, csvOptions } from '../options/csv-options.ts';
import { filesOf } from '../notes/files.ts';
import { gapsSaid } from '../notes/notes.ts';
import { Practices } from '../notes/practices.ts';
import { formatOf, out } from '../options/options.ts';
import { deliver } from '../notes/output.ts';
import { ndjsonOf } from '../report/ndjson.ts';
import { dayWork, specimensWork } from '../threads/list-work.ts';
import { threadsOption } from '../threads/pool.ts';
import type { Command } from '../options/command.ts';

const { text, csv, json } = logFormats;
const forms: Readonly<
  Record<'text' | 'csv' | 'json' | 'ndjson', (log: SpecimenLog, look: CsvLook) => string>
> = {
  text: text.write,
  csv: csv.write,
  json: json.write,
  ndjson: (log) => ndjsonOf({ on: log.on }, logData(log)),
};

export const specimens: Command = {
  takes: 'PATH…',
  options: [
    formatOf(Object.keys(forms)),
    { name: 'on', value: 'DATE', about: 'The day of the log, and not today.' },
    ...csvOptions,
    threadsOption,
    out,
  ],
  about:
    'Lists the specimens taken on a day, today where none is named, against what was sent, and counts methods and codes.',
  async run(given, console) {
    const format = formatOption(given, forms);
    const look = csvLook(given, format);
    const on = dateOption(given, 'on', console.today);
    const paths = filesOf(given.paths, console);
    const logs: SpecimenLog[] = [];
    await dayWork(specimensWork, given, paths, on, console, (log) => {
      logs.push(log);
    });
    const gaps = gapsSaid(paths, console, new Practices(console.cwd));
    const log = logsTogether(on, [...logs, specimenLog([], on, gaps)]);
    await deliver(forms[format](log, look), given.options.get('out'), console);
    return log.notRead.length > 0 ? 1 : 0;
  },
};
