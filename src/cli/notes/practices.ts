import { dirname, isAbsolute, join, relative, resolve } from 'node:path';
import type { Practice } from '../../note/generated/types.ts';
import { readPractice, type Source } from '../../note/read.ts';
import { tablesFrom, unreadTables, type Tables, type Trust } from '../../practice/tables.ts';
import type { NotRead } from '../../documents/not-read.ts';
import { practiceName } from '../../note/text/files.ts';
import { exists, isThere, load, type Loaded } from './files.ts';

/** A practice file as it was found above a note. */
export interface PracticeFile {
  /** From the working directory where it is below it, otherwise the whole path. */
  readonly path: string;
  readonly full: string;
  readonly loaded: Loaded;
  readonly source: Source<Practice>;
  readonly tables: Tables;
  readonly trust: Trust;
}

/** Finds the practice file of each note, and reads each file once. */
export class Practices {
  private readonly byFolder = new Map<string, PracticeFile | undefined>();

  constructor(private readonly cwd: string) {}

  /**
   * The nearest practice file upwards from a note, as far as the root of the repository (a folder with .git) or of
   * the file system.
   * @param path of the note; for standard input any name in the working directory
   */
  of(path: string): PracticeFile | undefined {
    return this.in(dirname(resolve(this.cwd, path)));
  }

  /** Every practice file that was found so far, each once. */
  used(): readonly PracticeFile[] {
    const found = [...this.byFolder.values()];
    return [...new Set(found.filter((practice) => practice !== undefined))];
  }

  private in(folder: string): PracticeFile | undefined {
    if (!this.byFolder.has(folder)) this.byFolder.set(folder, this.search(folder));
    return this.byFolder.get(folder);
  }

  private search(folder: string): PracticeFile | undefined {
    const full = join(folder, practiceName);
    // One that is there and can't be read must not give way to another further up.
    if (isThere(full)) return this.read(full);
    const parent = dirname(folder);
    return parent === folder || exists(join(folder, '.git')) ? undefined : this.in(parent);
  }

  private read(full: string): PracticeFile {
    const loaded = load(full);
    const source = readPractice('text' in loaded ? loaded.text : '');
    const trust = { holidays: holidaysBeside(full, source.value) };
    const tables = 'text' in loaded ? tablesFrom(source, trust) : unreadTables;
    const near = relative(this.cwd, full);
    return {
      path: near.startsWith('..') || isAbsolute(near) ? full : near,
      full,
      loaded,
      source,
      tables,
      trust,
    };
  }
}

/** The path of a practice file that was used; undefined where nothing of it could be. */
export const usedPath = (practice: PracticeFile | undefined): string | undefined =>
  practice?.tables.gap?.form === 'file' ? undefined : practice?.path;

/** Practice files of which something that matters is not in force, with the reason, as notes that were not read are listed. */
export const gapsOf = (practices: Practices): readonly NotRead[] =>
  practices
    .used()
    .flatMap(({ path, tables: { gap } }) => (gap === undefined ? [] : [{ path, why: gap.why }]));

/** The text of the calendar that a practice file names; undefined where it names none or it can't be read. */
function holidaysBeside(full: string, practice: Practice | null): string | undefined {
  const name = practice?.holidays?.value;
  if (name === undefined) return undefined;
  const calendar = load(resolve(dirname(full), name));
  return 'text' in calendar ? calendar.text : undefined;
}
