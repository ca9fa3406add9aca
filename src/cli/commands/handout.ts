import { handoutFormats, handoutOf, type Language } from '../../documents/handout/index.ts';
import { plain } from '../../documents/one-line.ts';
import { formatOption, onlyPath, UsageError, type Arguments } from '../options/arguments.ts';
import type { Console } from '../terminal/console.ts';
import { needNote } from '../notes/files.ts';
import { openNote } from '../notes/judge.ts';
import { deliver } from '../notes/output.ts';
import { Practices } from '../notes/practices.ts';
import { formatOf, out } from '../options/options.ts';
import { remark } from '../terminal/remark.ts';
import type { Command } from '../options/command.ts';

export const handout: Command = {
  takes: 'NOTE',
  options: [
    formatOf(Object.keys(handoutFormats)),
    { name: 'language', words: ['en', 'es'], about: 'Writes in this language, and not in that of the note.' },
    out,
  ],
  about: 'Writes what the patient takes home: care of the wound, when to call, stitches, result.',
  async run(given, console) {
    const format = formatOption(given, handoutFormats);
    const language = languageIn(given);
    const path = onlyPath(given, 'handout');
    needNote(path, console);
    const opened = await openNote(path, console.today(), console, new Practices(console.cwd));
    if ('fault' in opened) return none(path, `This file can't be read: ${opened.fault.words}.`, console);
    const { source, judgement, tables } = opened;
    const made = handoutOf(source, judgement, { tables, language });
    if (!made.readable) return none(path, made.why, console);
    await deliver(handoutFormats[format].write(made, console.now()), given.options.get('out'), console);
    for (const one of made.remarks) remark(`before it is handed out: ${one}`, console);
    if (format === 'eml')
      remark(
        'this draft contains health data; ordinary mail can be read on its way. Send it only where the patient agreed, and check the address.',
        console,
      );
    return judgement.findings.some(({ severity }) => severity === 'error') ? 1 : 0;
  },
};

function languageIn(given: Arguments): Language | undefined {
  const typed = given.options.get('language');
  if (typed === undefined) return undefined;
  if (typed === 'en' || typed === 'es') return typed;
  throw new UsageError(`--language is en or es; "${typed}" is neither`);
}

function none(path: string, why: string, console: Console): number {
  console.error(`wheal: no handout can be written for ${plain(path)}: ${plain(why)}\n`);
  return 1;
}
