import { safeJson } from '../../documents/safe-json.ts';
import { plain } from '../../documents/one-line.ts';
import { draft as draftOf, type Draft } from '../../draft/draft.ts';
import { formatOption, onlyPath, UsageError } from '../options/arguments.ts';
import { needNote, standardInput } from '../notes/files.ts';
import { loadFrom, tablesFor } from '../notes/notes.ts';
import { formatOf, out } from '../options/options.ts';
import { deliver } from '../notes/output.ts';
import { Practices } from '../notes/practices.ts';
import type { Command } from '../options/command.ts';

/** The forms of a draft: the note itself, or the note with the place of every fact. */
const formats: Readonly<Record<'yaml' | 'json', (draft: Draft) => string>> = {
  yaml: ({ note }) => note,
  json: ({ note, facts, unplaced, conflicts }) =>
    `${safeJson(
      {
        wheal: 1,
        note,
        facts: facts.map(({ path, value, from, to }) => ({ path, value, from, to })),
        unplaced: unplaced.map(({ from, to, text }) => ({ from, to, text })),
        conflicts: conflicts.map(({ path, words }) => ({
          path,
          words: words.map(({ from, to }) => ({ from, to })),
        })),
      },
      2,
    )}\n`,
};

export const draft: Command = {
  takes: 'TEXT',
  options: [formatOf(Object.keys(formats)), out],
  about:
    'Makes a draft note of dictated or typed text, from a file or from - (standard input). A person reads it before it is signed.',
  async run(given, console) {
    const format = formatOption(given, formats);
    const path = onlyPath(given, 'draft');
    needNote(path, console);
    const loaded = await loadFrom(path, console);
    if ('fault' in loaded) {
      console.error(`wheal: ${plain(path)} can't be read: ${loaded.fault.words}\n`);
      return 1;
    }
    if (!/[\p{L}\d]/u.test(loaded.text)) throw new UsageError(`there are no words in ${named(path)}`);
    const made = draftOf(loaded.text, tablesFor(path, new Practices(console.cwd)));
    await deliver(formats[format](made), given.options.get('out'), console);
    return 0;
  },
};

const named = (path: string): string => (path === standardInput ? 'standard input' : path);
