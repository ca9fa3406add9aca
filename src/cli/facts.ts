import { createHash } from 'node:crypto';
import { closeSync, constants, fstatSync, openSync, readSync } from 'node:fs';
import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { factsOf, unreadFacts, type NoteFacts } from '../followup/caseload.ts';
import { factsOfRow, rowOfFacts } from '../followup/kept-facts.ts';
import { readNote } from '../note/read.ts';
import { referenceTables, type Tables } from '../practice/tables.ts';
import type { IsoDate } from '../note/values.ts';
import type { Console } from './console.ts';
import { decoded, largest, standardInput, type Loaded } from './files.ts';
import { loadFrom } from './notes.ts';
import type { PracticeFile, Practices } from './practices.ts';
import { version } from './version.ts';

/** Rows of facts by a digest of all that they follow from: this version, the practice's file and the note's text. */
type Known = ReadonlyMap<string, string>;

/**
 * Reads the facts of notes, or takes them from an earlier run where neither the note nor its practice's file has
 * changed since. Nothing is kept unless the user names a folder for it, since the facts are health data.
 */
export class FactsReader {
  private readonly fresh = new Map<string, string>();
  private readonly practiceDigests = new Map<string, string>();
  private readonly room = Buffer.alloc(largest);
  private changed = false;

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
      return new FactsReader(console, practices, new Map(), undefined, today);
    const name = digest('', Buffer.from(roots.map((root) => resolve(cwd, root)).join('\n')));
    const store = join(resolve(cwd, cache), `open-${name}.txt`);
    return new FactsReader(console, practices, await stored(store), store, today);
  }

  async of(path: string): Promise<NoteFacts> {
    const practice = await this.practices.of(path === standardInput ? 'note' : path);
    const tables = practice?.tables ?? referenceTables;
    const bytes =
      this.store === undefined || path === standardInput
        ? undefined
        : quickly(resolve(this.console.cwd, path), this.room);
    if (bytes === undefined) return factsIn(await loadFrom(path, this.console), tables);
    const key = digest(this.digestOf(practice), bytes);
    const kept = this.known.get(key);
    const facts = kept === undefined ? undefined : factsOfRow(kept, this.today);
    if (kept !== undefined && facts !== undefined) {
      this.fresh.set(key, kept);
      return facts;
    }
    const read = factsIn(decoded(bytes), tables);
    this.fresh.set(key, rowOfFacts(read));
    this.changed ||= kept === undefined;
    return read;
  }

  /** Keeps what was read for the next run. That it can't be kept is no reason to fail, and is said. */
  async keep(): Promise<void> {
    if (this.store === undefined || (!this.changed && this.fresh.size === this.known.size)) return;
    const body = [...this.fresh].map(([key, row]) => `${key}\t${row}`).join('\n');
    const partial = `${this.store}.${process.pid}.tmp`;
    try {
      await mkdir(resolve(this.store, '..'), { recursive: true, mode: 0o700 });
      await writeFile(partial, `${digest('', Buffer.from(body))}\n${body}`, { mode: 0o600, flag: 'wx' });
      await rename(partial, this.store);
    } catch (error) {
      await rm(partial, { force: true }).catch(() => undefined);
      this.console.error(
        `wheal: nothing was kept for the next run: ${error instanceof Error ? error.message : String(error)}\n`,
      );
    }
  }

  private digestOf(practice: PracticeFile | undefined): string {
    const path = practice?.full ?? '';
    let own = this.practiceDigests.get(path);
    if (own === undefined) {
      own = digest(version, Buffer.from(practice?.source.text ?? ''));
      this.practiceDigests.set(path, own);
    }
    return own;
  }
}

/** Characters of a digest in base64url. */
const digestLength = 43;

const digest = (before: string, bytes: Uint8Array): string =>
  createHash('sha256').update(before).update('\n').update(bytes).digest('base64url');

/**
 * The bytes of an ordinary file of a note's size, at the least cost; undefined for everything else. They stand in one
 * room for all files, until the next one is read.
 */
function quickly(full: string, room: Buffer): Uint8Array | undefined {
  let file: number | undefined;
  try {
    // Without waiting: a pipe would wait for its writer.
    file = openSync(full, constants.O_RDONLY | constants.O_NONBLOCK);
    const info = fstatSync(file);
    if (!info.isFile() || info.size > largest) return undefined;
    const length = readSync(file, room, 0, largest, 0);
    return length === info.size ? room.subarray(0, length) : undefined;
  } catch {
    return undefined;
  } finally {
    if (file !== undefined) closeSync(file);
  }
}

const factsIn = (loaded: Loaded, tables: Tables): NoteFacts =>
  'text' in loaded ? factsOf(readNote(loaded.text), tables) : unreadFacts(loaded.fault.words);

/** What an earlier run kept; nothing where it is not whole. */
async function stored(path: string): Promise<Known> {
  const bytes = await readFile(path).catch(() => Buffer.alloc(0));
  const end = bytes.indexOf('\n');
  if (end < 0 || bytes.toString('latin1', 0, end) !== digest('', bytes.subarray(end + 1))) return new Map();
  const rows = bytes.toString('utf8', end + 1).split('\n');
  return new Map(rows.map((row) => [row.slice(0, digestLength), row.slice(digestLength + 1)]));
}
