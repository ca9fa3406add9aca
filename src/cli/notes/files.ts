import { lstatSync, readdirSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { isNoteName, isSkipped, largest, noteEnding, practiceName } from '../../note/text/files.ts';
import { UsageError } from '../options/arguments.ts';
import type { Console } from '../terminal/console.ts';

/** Stands for standard input on the command line and in reports. */
export const standardInput = '-';

/** Bytes of a list of names or of a calendar: both may be of a whole practice. */
export const largestList = 64 * 1024 * 1024;

/** Whether a path means standard input: as itself, or by the name that was given to it. */
export const isInput = (path: string, { inputName }: Pick<Console, 'inputName'>): boolean =>
  path === standardInput || path === inputName;

/** The code under which a file that can't be read is reported, where the reader has none. */
export const unreadable = 'yaml/unreadable';

/** Why a file can't be read: a code, and plain words that end the sentence "This file can't be read: …". */
export interface FileFault {
  readonly code: string;
  readonly words: string;
}

export type Loaded = { readonly text: string } | { readonly fault: FileFault };

export const isPractice = (path: string): boolean => basename(path) === practiceName;

/**
 * The files that paths mean, each once: a file itself, a folder every note and practice file below it, in the order
 * of names. Folders that can't be read are among them, so that they don't pass in silence.
 * @throws UsageError where there is no such path, or no note in all of them
 */
export function filesOf(
  paths: readonly string[],
  console: Pick<Console, 'cwd' | 'inputName'>,
): readonly string[] {
  const { cwd } = console;
  const found = new Map<string, string>();
  const entered = new Set<string>();
  const named = new Set<string>();
  for (const path of paths) {
    const full = resolve(cwd, path);
    if (isInput(path, console)) found.set(path === standardInput ? path : full, path);
    else if (kindOf(full, path) === 'file' || isNoteName(path)) {
      found.set(full, path);
      named.add(path);
    } else
      for (const inside of below(path, cwd, entered)) {
        // What is found below one folder is there once.
        const key = paths.length === 1 ? inside : resolve(cwd, inside);
        if (!found.has(key)) found.set(key, inside);
      }
  }
  const files = [...found.values()];
  if (files.every((path) => isPractice(path) && !named.has(path)))
    throw new UsageError(`there is no note (*${noteEnding}) in ${paths.join(', ')}`);
  return files;
}

/** Makes sure that a path may be the one note of a command. @throws UsageError where it is not there, or a folder */
export function needNote(path: string, console: Pick<Console, 'cwd' | 'inputName'>): void {
  const { cwd } = console;
  if (isInput(path, console)) return;
  if (kindOf(resolve(cwd, path), path) === 'folder' && !isNoteName(path))
    throw new UsageError(`${path} is a folder; name one note`);
  if (isPractice(path)) throw new UsageError(`${path} is a practice file, not a note`);
}

function kindOf(full: string, path: string): 'file' | 'folder' {
  const info = attempt(() => statSync(full)) ?? attempt(() => lstatSync(full));
  if (info === undefined) throw new UsageError(`there is no file or folder ${path}`);
  return info.isDirectory() ? 'folder' : 'file';
}

/** Follows links, but enters each real folder once. */
function below(folder: string, cwd: string, entered: Set<string>): readonly string[] {
  const full = resolve(cwd, folder);
  const real = attempt(() => realpathSync.native(full)) ?? full;
  if (entered.has(real)) return [];
  entered.add(real);
  const names = attempt(() => readdirSync(full));
  if (names === undefined) return [folder];
  const found: string[] = [];
  // Joined once: there may be thousands of names.
  const prefix = join(folder, 'x').slice(0, -1);
  for (const name of names.sort()) {
    const path = `${prefix}${name}`;
    if (isSkipped(name)) continue;
    if (isNoteName(name)) found.push(path);
    else if (mayBeFolder(resolve(cwd, path), name)) found.push(...below(path, cwd, entered));
  }
  return found;
}

/**
 * Whether a name is a folder, or may be one that can't be reached: a link that leads nowhere, a path that is too long. That
 * is said, and not passed over.
 */
function mayBeFolder(full: string, name: string): boolean {
  try {
    return statSync(full).isDirectory();
  } catch (error) {
    const isLong = error instanceof Error && 'code' in error && error.code === 'ENAMETOOLONG';
    return isLong || !/\.\w{1,5}$/.test(name);
  }
}

/** Whether a name is taken, be it by what can't be read, or by a link that leads nowhere. */
export function isThere(full: string): boolean {
  try {
    return lstatSync(full, { throwIfNoEntry: false }) !== undefined;
  } catch (error) {
    // A part of the path is a file: nothing is below it. Everything else may hide what is there.
    return !(error instanceof Error && 'code' in error && error.code === 'ENOTDIR');
  }
}

/** Whether something is there that can be reached. */
export const exists = (full: string): boolean =>
  attempt(() => statSync(full, { throwIfNoEntry: false })) !== undefined;

function attempt<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch {
    return undefined;
  }
}

/**
 * Reads a file of at most `most` bytes. Never throws.
 * @param kind what it is; a list of names may have NUL between them
 */
export function load(full: string, most = largest, kind: 'note' | 'list' = 'note'): Loaded {
  try {
    const info = statSync(full);
    if (info.isDirectory()) {
      readdirSync(full);
      return faulty('this is a folder, not a file');
    }
    if (!info.isFile()) return faulty('this is not an ordinary file; use - to read from standard input');
    if (info.size > most) return tooLarge(`with ${Math.ceil(info.size / 1024)} KiB it`);
    return decoded(readFileSync(full), most, kind);
  } catch (error) {
    return faulty(reasonOf(error));
  }
}

/** The text of bytes, if they are text. */
export function decoded(bytes: Uint8Array, most = largest, kind: 'note' | 'list' = 'note'): Loaded {
  if (bytes.length > most) return tooLarge('it');
  if (kind === 'note' && bytes.includes(0))
    return faulty('this is a binary file, or its text is not UTF-8', notText);
  try {
    return { text: new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes) };
  } catch {
    return faulty('its text is not UTF-8', notText);
  }
}

const notText = 'yaml/not-text';

const faulty = (words: string, code = unreadable): Loaded => ({ fault: { code, words } });

const tooLarge = (it: string): Loaded =>
  faulty(`${it} is larger than a note can be (${largest / 1024} KiB)`, 'yaml/too-large');

const reasons: ReadonlyMap<string | undefined, string> = new Map([
  ['EACCES', 'you are not permitted to read it'],
  ['EPERM', 'you are not permitted to read it'],
  ['ENOENT', 'it is not there; a link may lead nowhere'],
  ['ELOOP', 'its links lead in a circle'],
  ['ENAMETOOLONG', 'its path is too long for this system'],
  ['EISDIR', 'this is a folder, not a file'],
]);

function reasonOf(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : undefined;
  return reasons.get(code) ?? `the system says ${code ?? String(error)}`;
}
