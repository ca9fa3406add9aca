import { safeJson } from '../../documents/safe-json.ts';
import { summaryFormats, summaryOf, type NoSummary } from '../../documents/summary/index.ts';
import { plain } from '../../documents/one-line.ts';
import { dateOption, formatOption, onlyPath } from '../options/arguments.ts';
import type { Console } from '../terminal/console.ts';
import { needNote } from '../notes/files.ts';
import { openNote } from '../notes/judge.ts';
import { deliver } from '../notes/output.ts';
import { Practices, usedPath } from '../notes/practices.ts';
import { asOf, formatOf, out } from '../options/options.ts';
import type { Command } from '../options/command.ts';

export const summary: Command = {
  takes: 'NOTE',
  options: [formatOf(Object.keys(summaryFormats)), asOf, out],
  about: 'Writes what a chart needs to know of one note.',
  async run(given, console) {
    const format = formatOption(given, summaryFormats);
    const today = dateOption(given, 'as-of', console.today);
    const path = onlyPath(given, 'summary');
    needNote(path, console);
    const opened = await openNote(path, today, console, new Practices(console.cwd));
    if ('fault' in opened)
      return unreadable(
        { wheal: 1, readable: false, why: `This file can't be read: ${opened.fault.words}.` },
        path,
        format,
        console,
      );
    const { source, judgement, tables, practice } = opened;
    const model = summaryOf(source, judgement, { tables, practice: usedPath(practice), today });
    if (!model.readable) return unreadable(model, path, format, console);
    await deliver(summaryFormats[format].write(model), given.options.get('out'), console);
    return judgement.findings.some(({ severity }) => severity === 'error') ? 1 : 0;
  },
};

/** There is no summary of what can't be read: only JSON has something to write, and nothing goes into a file. */
function unreadable(model: NoSummary, path: string, format: string, console: Console): number {
  if (format === 'json') console.write(`${safeJson(model, 2)}\n`);
  console.error(`wheal: ${plain(path)} can't be summed up: ${plain(model.why)}\n`);
  return 1;
}
