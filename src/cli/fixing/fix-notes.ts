import { statSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Context } from '../../checks/index.ts';
import { plain } from '../../documents/one-line.ts';
import { UsageError, type Arguments } from '../options/arguments.ts';
import type { Console } from '../terminal/console.ts';
import { isInput, isPractice, standardInput } from '../notes/files.ts';
import { loadFrom, tablesFor } from '../notes/notes.ts';
import type { Option } from '../options/options.ts';
import { outputOf, replaceWhole } from '../notes/output.ts';
import type { Practices } from '../notes/practices.ts';
import { remark } from '../terminal/remark.ts';

/** Fixes the text of notes. Apart, so that a check that fixes nothing loads nothing of it. */
export interface Fixer {
  /** The text with every safe fix of spelling; `signed` where a signature keeps it as it is. */
  readonly fixed: (text: string, context: Context) => { readonly text: string } | 'signed';
  /** What changes, as a unified diff. */
  readonly difference: (path: string, before: string, after: string) => string;
}

export const fixOptions: readonly Option[] = [
  {
    name: 'fix',
    about:
      'Before the check, corrects what is surely misspelled in each note; never what the record says. A signed note is left as it is.',
  },
  { name: 'dry-run', about: 'With --fix: shows what would change, and writes nothing.' },
  { name: 'yes', about: 'With --fix: changes all notes of a folder.' },
];

/** Whether notes are to be fixed. @throws UsageError where that is not clear */
export async function fixWanted(given: Arguments, count: number, console: Console): Promise<boolean> {
  const { flags, paths } = given;
  if (!flags.has('fix')) {
    for (const name of ['dry-run', 'yes'])
      if (flags.has(name)) throw new UsageError(`--${name} goes with --fix`);
    return false;
  }
  if (paths.some((path) => isInput(path, console)))
    throw new UsageError('--fix writes into files; standard input is none');
  if (flags.has('dry-run') || flags.has('yes') || !paths.some((path) => isFolder(resolve(console.cwd, path))))
    return true;
  const question = `Fix the spelling in ${count} ${count === 1 ? 'file' : 'files'} of the folder?`;
  if ((await console.ask?.(question)) === true) return true;
  throw new UsageError('--fix of a folder needs --yes; --dry-run shows what would change');
}

const isFolder = (full: string): boolean => statSync(full, { throwIfNoEntry: false })?.isDirectory() === true;

/**
 * Fixes notes one by one, each whole or not at all. What can't be read is left for the check to report.
 * @returns how many signed notes were left as they are
 * @throws UsageError where a note has changed meanwhile, or can't be written
 */
export async function fixNotes(
  paths: readonly string[],
  given: Arguments,
  fixer: Fixer,
  today: string,
  console: Console,
  practices: Practices,
): Promise<number> {
  const output = outputOf(given, console);
  const dry = given.flags.has('dry-run');
  let refused = 0;
  for (const path of paths) {
    if (path === standardInput || isPractice(path)) continue;
    const loaded = await loadFrom(path, console);
    if ('fault' in loaded) continue;
    const fixed = fixer.fixed(loaded.text, { tables: tablesFor(path, practices), today });
    if (fixed === 'signed') {
      refused += 1;
      console.error(`wheal: ${plain(path)} is signed and was left as it is\n`);
    } else if (fixed.text !== loaded.text && dry)
      output.write(fixer.difference(path, loaded.text, fixed.text));
    else if (fixed.text !== loaded.text) {
      await replaceWhole(path, loaded.text, fixed.text, console);
      remark(`${plain(path)}: spelling fixed`, console);
    }
  }
  if (dry) await output.end();
  return refused;
}
