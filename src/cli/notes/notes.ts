import { resolve } from 'node:path';
import type { NotRead } from '../../documents/not-read.ts';
import { plain } from '../../documents/one-line.ts';
import type { Note } from '../../note/generated/types.ts';
import { unreadWhy } from '../../followup/caseload.ts';
import { readNote } from '../../note/read.ts';
import { referenceTables, type Tables } from '../../practice/tables.ts';
import type { Console } from '../terminal/console.ts';
import { largest } from '../../note/text/files.ts';
import { decoded, isInput, isPractice, load, standardInput, type Loaded } from './files.ts';
import { gapsOf, type Practices } from './practices.ts';

/** A note that was read, with the tables of its practice. */
export interface NoteFile {
  readonly path: string;
  readonly text: string;
  readonly note: Note;
  readonly tables: Tables;
}

/** Reads a file, or standard input for `-`. */
export async function loadFrom(path: string, console: Console): Promise<Loaded> {
  return isInput(path, console)
    ? decoded(await console.readInput(largest))
    : load(resolve(console.cwd, path));
}

/** The tables of the practice that a note belongs to. */
export function tablesFor(path: string, practices: Practices): Tables {
  return practices.of(path === standardInput ? 'note' : path)?.tables ?? referenceTables;
}

interface NotesRead {
  readonly notes: readonly NoteFile[];
  readonly notRead: readonly NotRead[];
}

/** Reads every note among the files. Those that can't be read are named on standard error and in what is written. */
export async function readEach(
  paths: readonly string[],
  console: Console,
  practices: Practices,
): Promise<NotesRead> {
  const notes: NoteFile[] = [];
  const notRead: NotRead[] = [];
  for (const path of paths) {
    if (isPractice(path)) continue;
    const loaded = await loadFrom(path, console);
    const source = 'text' in loaded ? readNote(loaded.text) : undefined;
    const note = source?.value ?? null;
    if ('text' in loaded && note !== null) {
      notes.push({ path, text: loaded.text, note, tables: tablesFor(path, practices) });
      const why = source && unreadWhy(source);
      if (why === undefined) continue;
      console.error(`wheal: ${plain(path)}: ${why}; the rest of it is in what follows\n`);
      notRead.push({ path, why });
    } else {
      const why = 'fault' in loaded ? loaded.fault.words : 'there is no note in it';
      console.error(`wheal: ${plain(path)} can't be read: ${why}; it is missing from what follows\n`);
      notRead.push({ path, why });
    }
  }
  return { notes, notRead };
}

/** Names the practice files of which something is not in force on standard error. @returns them, for what is written */
export function gapsSaid(
  paths: readonly string[],
  console: Console,
  practices: Practices,
): readonly NotRead[] {
  for (const path of paths) practices.of(path === standardInput ? 'note' : path);
  const gaps = gapsOf(practices);
  for (const gap of gaps)
    console.error(`wheal: ${plain(gap.path)}: ${gap.why}; published values apply in what follows\n`);
  return gaps;
}
