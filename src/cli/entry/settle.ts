import { resolve } from 'node:path';
import { UsageError, type Arguments } from '../options/arguments.ts';
import type { Command } from '../options/command.ts';
import type { Console } from '../terminal/console.ts';
import { isPractice, largestList, load, standardInput } from '../notes/files.ts';

/**
 * Applies the options that mean the same for every command, so that a command sees nothing but its paths and its console.
 * @throws UsageError where they contradict each other or the command
 */
export async function settled(
  name: string,
  { takes }: Command,
  given: Arguments,
  console: Console,
): Promise<readonly [Arguments, Console]> {
  const { options, flags } = given;
  if (flags.has('force') && !options.has('out')) throw new UsageError('--force goes with --out');
  const inputName = inputNameIn(given);
  const paths = [...given.paths, ...(await listed(given, console))].map((path) =>
    path === standardInput ? (inputName ?? path) : path,
  );
  if (inputName !== undefined && given.paths.length === 0) paths.push(inputName);
  if (takes === '' && paths.length > 0) throw new UsageError(`${name} takes no path; "${paths[0]}" is one`);
  if (takes === 'PATH…' && paths.length === 0) throw new UsageError(`${name} needs a path`);
  return [{ ...given, paths }, consoleFor(given, inputName, console)];
}

function inputNameIn({ options, paths }: Arguments): string | undefined {
  const name = options.get('stdin-filename');
  if (name === undefined) return undefined;
  if (name === '' || isPractice(name) || name === standardInput)
    throw new UsageError('--stdin-filename is the name of a note');
  if (paths.length > 0 && !paths.includes(standardInput))
    throw new UsageError('--stdin-filename names what - reads; there is no - among the paths');
  return name;
}

/** The names in the list that --files-from names: one a line, or each ended by a NUL. */
async function listed({ options, paths }: Arguments, console: Console): Promise<readonly string[]> {
  const list = options.get('files-from');
  if (list === undefined) return [];
  if (list === standardInput && (paths.includes(standardInput) || options.has('stdin-filename')))
    throw new UsageError('standard input is either a list of files or a note');
  const text = await listText(list, console);
  const names = text.split(text.includes('\0') ? '\0' : /\r?\n/).filter((name) => name !== '');
  if (names.length === 0) throw new UsageError(`there is no name in the list of --files-from ${list}`);
  // A file of that name, since standard input is taken or was not meant.
  return names.map((name) => (name === standardInput ? `./${name}` : name));
}

async function listText(list: string, console: Console): Promise<string> {
  if (list === standardInput) return Buffer.from(await console.readInput(largestList)).toString('utf8');
  const loaded = load(resolve(console.cwd, list), largestList, 'list');
  if ('fault' in loaded) throw new UsageError(`${list} can't be read: ${loaded.fault.words}`);
  return loaded.text;
}

function consoleFor({ flags }: Arguments, inputName: string | undefined, console: Console): Console {
  if (inputName === undefined && !flags.has('quiet') && !flags.has('force')) return console;
  return {
    ...console,
    ...(flags.has('quiet') ? { quiet: true, errorIsTerminal: false } : {}),
    ...(flags.has('force') ? { ask: () => Promise.resolve(true) } : {}),
    ...(inputName === undefined ? {} : { inputName, readInput: once(console.readInput) }),
  };
}

/** Reads once, since the one that checks and the one that compares both want it. */
function once(read: Console['readInput']): Console['readInput'] {
  let bytes: Promise<Uint8Array> | undefined;
  return (limit) => (bytes ??= read(limit));
}
