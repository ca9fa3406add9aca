import { lstat, realpath, rename, rm, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { noteEnding } from '../note/text/files.ts';
import { UsageError, type Arguments } from './arguments.ts';
import type { Console } from './console.ts';
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
  await mayWrite(full, out, console);
  await writeWhole(full, text, out);
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
  await writeWhole(full, text, path, (await stat(full)).mode);
}

/** Writes beside the file, then puts it in its place. */
async function writeWhole(full: string, text: string, named: string, mode = 0o666): Promise<void> {
  const whole = join(dirname(full), `.${basename(full)}.${process.pid}.tmp`);
  try {
    await writeFile(whole, text, { flag: 'wx', mode });
    await rename(whole, full);
  } catch (error) {
    await rm(whole, { force: true }).catch(() => undefined);
    throw new UsageError(
      `${named} can't be written: ${error instanceof Error ? error.message : String(error)}`,
    );
  }
}

async function mayWrite(full: string, out: string, console: Console): Promise<void> {
  const there = await lstat(full).catch(() => undefined);
  if (there === undefined) return;
  if (full.endsWith(noteEnding)) throw new UsageError(`${out} is a note, and a note is never replaced`);
  if (there.isDirectory()) throw new UsageError(`${out} is a folder; --out names a file`);
  if ((await console.ask?.(`${out} exists. Replace it?`)) === true) return;
  throw new UsageError(`${out} exists and was left as it is; choose another name, or say --force`);
}
