import {
  closeSync,
  fsyncSync,
  linkSync,
  openSync,
  readdirSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { lstat, realpath, stat } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { isNoteName } from '../../note/text/files.ts';
import { UsageError, type Arguments } from '../options/arguments.ts';
import type { Console } from '../terminal/console.ts';
import { load } from './files.ts';

/**
 * Writes a document where the user wants it: to a file, whole or not at all, or to standard output.
 * @throws UsageError where the file exists and nobody says that it may be replaced, or can't be written
 */
export async function deliver(text: string, out: string | undefined, console: Console): Promise<void> {
  if (out === undefined) {
    console.write(text);
    return;
  }
  const full = resolve(console.cwd, out);
  await writeWhole(full, text, out, await placeFor(full, out, console));
}

/** Where the parts of a long output go. */
interface Output {
  readonly isFile: boolean;
  readonly write: (part: string) => void;
  /** @throws UsageError where the file can't be written */
  readonly end: () => Promise<void>;
}

/** The output of a command in parts: at once to standard output, or together into the file of --out. */
export function outputOf({ options }: Arguments, console: Console): Output {
  const out = options.get('out');
  if (out === undefined) return { isFile: false, write: console.write, end: () => Promise.resolve() };
  const parts: string[] = [];
  return {
    isFile: true,
    write: (part) => {
      parts.push(part);
    },
    end: () => deliver(parts.join(''), out, console),
  };
}

/**
 * Replaces the text of a note, whole or not at all; a link stays a link, and the file keeps who may read it.
 * @throws UsageError where the file is no longer as it was read, or can't be written
 */
export async function replaceWhole(
  path: string,
  before: string,
  text: string,
  console: Console,
): Promise<void> {
  const named = resolve(console.cwd, path);
  const full = await realpath(named).catch(() => named);
  const loaded = load(full);
  if (!('text' in loaded) || loaded.text !== before)
    throw new UsageError(`${path} has changed meanwhile and was left as it is`);
  await writeWhole(full, text, path, 'replaced', (await stat(full)).mode);
}

/** What is done with a file that is there. */
type Place = 'new' | 'replaced';

/** Signals by which a user or the system ends a command. */
const endings = ['SIGHUP', 'SIGINT', 'SIGTERM'] as const;

/**
 * Writes beside the file, to the disk, then gives it its name: one that is new only where still nobody has it. In one go,
 * so that what ends the command waits until it is done and nothing is left beside the file.
 */
async function writeWhole(
  full: string,
  text: string,
  named: string,
  place: Place,
  mode = 0o666,
): Promise<void> {
  const stop = (_name: string, number: number): void => {
    process.exit(128 + number);
  };
  for (const signal of endings) process.on(signal, stop);
  try {
    sweep(full);
    put(full, text, place, mode);
    // What has come meanwhile is heard now.
    await new Promise((resume) => setImmediate(resume));
  } catch (error) {
    const isTaken = place === 'new' && error instanceof Error && 'code' in error && error.code === 'EEXIST';
    const why = error instanceof Error ? error.message : String(error);
    throw new UsageError(
      isTaken ? `${named} has appeared meanwhile and was left as it is` : `${named} can't be written: ${why}`,
    );
  } finally {
    for (const signal of endings) process.off(signal, stop);
  }
}

const besideOf = (full: string, pid: number | string): string =>
  join(dirname(full), `.${basename(full)}.${pid}.tmp`);

function put(full: string, text: string, place: Place, mode: number): void {
  const beside = besideOf(full, process.pid);
  try {
    writeToDisk(beside, text, mode);
    if (place === 'replaced') renameSync(beside, full);
    else link(beside, full, text, mode);
  } finally {
    rmSync(beside, { force: true });
  }
}

function writeToDisk(path: string, text: string, mode: number): void {
  const file = openSync(path, 'wx', mode);
  try {
    writeFileSync(file, text);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** Gives a file its name where nobody has it; written there where the file system knows no second name of a file. */
function link(beside: string, full: string, text: string, mode: number): void {
  try {
    linkSync(beside, full);
  } catch (error) {
    if (!(error instanceof Error && 'code' in error) || error.code === 'EEXIST') throw error;
    writeToDisk(full, text, mode);
  }
}

/** Takes away what a command left beside the file that was killed outright, as by a loss of power. */
function sweep(full: string): void {
  const [before = '', after = ''] = basename(besideOf(full, '\n')).split('\n');
  for (const name of readdirSync(dirname(full))) {
    if (!name.startsWith(before) || !name.endsWith(after)) continue;
    const pid = Number(name.slice(before.length, -after.length));
    if (Number.isInteger(pid) && pid > 0 && !isRunning(pid))
      rmSync(join(dirname(full), name), { force: true });
  }
}

function isRunning(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
}

/** @throws UsageError where what is there may not be replaced */
async function placeFor(full: string, out: string, console: Console): Promise<Place> {
  const there = await lstat(full).catch(() => undefined);
  if (there === undefined) return 'new';
  if (isNoteName(full)) throw new UsageError(`${out} is a note, and a note is never replaced`);
  if (there.isDirectory()) throw new UsageError(`${out} is a folder; --out names a file`);
  if ((await console.ask?.(`${out} exists. Replace it?`)) === true) return 'replaced';
  throw new UsageError(`${out} exists and was left as it is; choose another name, or say --force`);
}
