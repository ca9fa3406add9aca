import crypto from 'node:crypto';
import { closeSync, constants, openSync, readSync } from 'node:fs';
import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { basename, dirname, join, resolve, sep } from 'node:path';
import { factsOf, unreadFacts, type NoteFacts } from '../../followup/caseload.ts';
import { builtFrom, factsOfRow, rowOfFacts } from '../../followup/kept-facts.ts';
import { readNote } from '../../note/read.ts';
import { referenceTables, type Tables } from '../../practice/tables.ts';
import type { IsoDate } from '../../note/values/values.ts';
import type { Console } from '../terminal/console.ts';
import { largest } from '../../note/text/files.ts';
import { decoded, isInput, standardInput, type Loaded } from './files.ts';
import { loadFrom } from './notes.ts';
import type { PracticeFile, Practices } from './practices.ts';

/** What an earlier run kept: rows by a digest of all that they follow from, the code, the practice's files and the note's text. */
interface Known {
  readonly text: string;
  /** The number of a line by its digest. */
  readonly rows: ReadonlyMap<string, number>;
  /** Where each line begins; the last one is where the next would. */
  readonly starts: Int32Array;
  /** For each line whether a note of this run has it. */
  readonly used: Uint8Array;
}

/** A folder of notes with what its notes are judged by. */
interface Folder {
  readonly path: string;
  readonly full: string;
  readonly tables: Tables;
  readonly digest: string;
}

/** Without a build nothing that another process kept is found again. */
const code = builtFrom ?? crypto.randomUUID();

/**
 * Reads the facts of notes, or takes them from an earlier run where neither the note nor its practice's files have
 * changed since. Nothing is kept unless the user names a folder for it, since the facts are health data.
 */
export class FactsReader {
  private readonly fresh = new Map<string, string>();
  private readonly practiceDigests = new Map<string, string>();
  // The digest of the practice, a file of a note's size, and one byte more that shows that it is larger.
  private readonly room = Buffer.alloc(digestLength + largest + 1);
  private folder: Folder | undefined;

  private constructor(
    private readonly console: Console,
    private readonly practices: Practices,
    private readonly known: Known,
    private readonly store: string | undefined,
    private readonly today: IsoDate,
  ) {}

  /**
   * @param roots what the user named: each set of paths has a store of its own
   * @param today the day for which the facts are wanted
   */
  static async for(
    roots: readonly string[],
    today: IsoDate,
    console: Console,
    practices: Practices,
  ): Promise<FactsReader> {
    const { cache, cwd } = console;
    if (cache === undefined || cache === '')
      return new FactsReader(console, practices, knownIn(''), undefined, today);
    const name = digest(roots.map((root) => resolve(cwd, root)).join('\n'));
    const store = join(resolve(cwd, cache), `open-${name}.txt`);
    return new FactsReader(console, practices, await stored(store), store, today);
  }

  /** Whether what is read is kept for the next run. */
  get keeps(): boolean {
    return this.store !== undefined;
  }

  /** The facts of a note; at once where nothing has to be waited for, since there may be thousands. */
  of(path: string): NoteFacts | Promise<NoteFacts> {
    const folder = dirname(path);
    if (isInput(path, this.console) || this.folder?.path !== folder) return this.entering(path, folder);
    return this.quickly(path, this.folder) ?? this.plainly(path, this.folder);
  }

  /** Keeps what was read for the next run. That it can't be kept is no reason to fail, and is said. */
  async keep(): Promise<void> {
    if (this.store === undefined || (this.fresh.size === 0 && !this.known.used.includes(0))) return;
    const { text, starts, used } = this.known;
    const again = [...used].map((is, row) => (is === 0 ? '' : text.slice(starts[row], starts[row + 1])));
    const body = [...again, ...[...this.fresh].map(([key, row]) => `${key}${row}\n`)].join('');
    const partial = `${this.store}.${process.pid}.tmp`;
    try {
      await mkdir(resolve(this.store, '..'), { recursive: true, mode: 0o700 });
      await writeFile(partial, `${digest(body)}\n${body}`, { mode: 0o600, flag: 'wx' });
      await rename(partial, this.store);
    } catch (error) {
      await rm(partial, { force: true }).catch(() => undefined);
      this.console.error(
        `wheal: nothing was kept for the next run: ${error instanceof Error ? error.message : String(error)}\n`,
      );
    }
  }

  private async entering(path: string, name: string): Promise<NoteFacts> {
    const practice = this.practices.of(path === standardInput ? 'note' : path);
    const folder: Folder = {
      path: name,
      full: resolve(this.console.cwd, name),
      tables: practice?.tables ?? referenceTables,
      digest: this.digestOf(practice),
    };
    if (isInput(path, this.console)) return await this.plainly(path, folder);
    this.folder = folder;
    this.room.write(folder.digest, 0, 'latin1');
    return this.quickly(path, folder) ?? (await this.plainly(path, folder));
  }

  private async plainly(path: string, { tables }: Folder): Promise<NoteFacts> {
    return factsIn(await loadFrom(path, this.console), tables);
  }

  /** From what was kept, or else kept from now on; undefined where nothing is kept, or it is no ordinary file. */
  private quickly(path: string, { full, tables }: Folder): NoteFacts | undefined {
    if (this.store === undefined) return undefined;
    const end = readInto(this.room, digestLength, `${full}${sep}${basename(path)}`);
    if (end === undefined) return undefined;
    const key = digest(this.room.subarray(0, end));
    const row = this.known.rows.get(key);
    const facts = row === undefined ? undefined : this.factsOf(row);
    if (facts !== undefined) return facts;
    const read = factsIn(decoded(this.room.subarray(digestLength, end)), tables);
    // Where the line that is kept does not reach back to this day, it is still the line of this note.
    if (row === undefined) this.fresh.set(key, rowOfFacts(read));
    return read;
  }

  private factsOf(row: number): NoteFacts | undefined {
    const { text, starts, used } = this.known;
    used[row] = 1;
    return factsOfRow(text, this.today, starts[row]! + digestLength, starts[row + 1]! - 1);
  }

  private digestOf(practice: PracticeFile | undefined): string {
    const path = practice?.full ?? '';
    let own = this.practiceDigests.get(path);
    if (own === undefined) {
      const texts = [code, practice?.source.text ?? '', practice?.trust.holidays ?? ''];
      own = digest(texts.map(digest).join(' '));
      this.practiceDigests.set(path, own);
    }
    return own;
  }
}

/** Characters of a digest in base64url. */
const digestLength = 43;

// Absent before Node 20.12; it costs half, since it leaves nothing to be collected.
const { hash } = crypto as Partial<Pick<typeof crypto, 'hash'>>;

const digest = (bytes: Uint8Array | string): string =>
  hash === undefined
    ? crypto.createHash('sha256').update(bytes).digest('base64url')
    : hash('sha256', bytes, 'base64url');

/**
 * Reads an ordinary file into a room from an offset on, at the least cost.
 * @returns where it ends; undefined where there is no room for it, and for everything else than a file
 */
function readInto(room: Buffer, from: number, full: string): number | undefined {
  let file: number | undefined;
  try {
    // Without waiting: a pipe would wait for its writer, and answers with nothing or an error.
    file = openSync(full, constants.O_RDONLY | constants.O_NONBLOCK);
    let end = from;
    for (let more = -1; more !== 0; end += more) more = readSync(file, room, end, room.length - end, null);
    return end === from || end === room.length ? undefined : end;
  } catch {
    return undefined;
  } finally {
    if (file !== undefined) closeSync(file);
  }
}

/** The facts of a note, be it read or not. */
export const factsIn = (loaded: Loaded, tables: Tables): NoteFacts =>
  'text' in loaded ? factsOf(readNote(loaded.text), tables) : unreadFacts(loaded.fault.words);

/** What an earlier run kept; nothing where it is not whole. */
async function stored(path: string): Promise<Known> {
  const bytes = await readFile(path).catch(() => Buffer.alloc(0));
  const head = bytes.indexOf('\n');
  const isWhole = head >= 0 && bytes.toString('latin1', 0, head) === digest(bytes.subarray(head + 1));
  return knownIn(isWhole ? bytes.toString('utf8', head + 1) : '');
}

/** Lines that begin with their digest and end with a line break. */
function knownIn(text: string): Known {
  const rows = new Map<string, number>();
  const starts = [0];
  for (let at = 0; at < text.length; at = starts[rows.size]!) {
    rows.set(text.slice(at, at + digestLength), rows.size);
    starts.push(text.indexOf('\n', at) + 1);
  }
  return { text, rows, starts: Int32Array.from(starts), used: new Uint8Array(rows.size) };
}
