import type { Command } from '../options/command.ts';
import { didYouMean, readArguments, UsageError } from '../options/arguments.ts';
import { exit } from '../terminal/exit.ts';
import type { Console } from '../terminal/console.ts';
import { plain } from '../../documents/one-line.ts';
import { helpOf, helpOfAll, optionsOf } from '../options/help.ts';
import { settled } from './settle.ts';
import { version } from '../terminal/version.ts';

/**
 * Runs one command line and returns its exit code.
 * @param argv the words after the program's name
 */
export type Main = (argv: readonly string[], console: Console) => Promise<number>;

/** A command line with these commands. */
export const commandLine =
  (commands: ReadonlyMap<string, Command>): Main =>
  (argv, console) =>
    run(commands, argv, console);

async function run(
  commands: ReadonlyMap<string, Command>,
  argv: readonly string[],
  console: Console,
): Promise<number> {
  const [name, ...rest] = argv;
  try {
    if (name === undefined) throw new UsageError('nothing to do; try wheal --help');
    if (isVersion(name)) return said(console, `${version}\n`);
    if (name === 'help' && rest.length > 0) return await run(commands, [...rest, '--help'], console);
    if (isHelp(name) || name === 'help') return said(console, helpOfAll(commands));
    const command = commands.get(name);
    if (command === undefined) throw new UsageError(unknown(name, [...commands.keys()]));
    return await runOne(name, command, rest, console);
  } catch (error) {
    if (!(error instanceof UsageError)) throw error;
    console.error(`wheal: ${plain(error.message)}\n`);
    return exit.nothing;
  }
}

async function runOne(
  name: string,
  command: Command,
  words: readonly string[],
  console: Console,
): Promise<number> {
  const before = words.slice(0, words.includes('--') ? words.indexOf('--') : words.length);
  if (before.some(isHelp)) return said(console, helpOf(name, command));
  if (before.some(isVersion)) return said(console, `${version}\n`);
  const given = readArguments(words, optionsOf(command));
  return await command.run(...(await settled(name, command, given, console)));
}

const isHelp = (word: string): boolean => word === '--help' || word === '-h';
const isVersion = (word: string): boolean => word === '--version' || word === '-V';

function unknown(name: string, known: readonly string[]): string {
  if (name.startsWith('-')) return `there is no option ${name}; a command comes first, try wheal --help`;
  return `there is no command "${name}"${didYouMean(name, known) || '; try wheal --help'}`;
}

function said(console: Console, text: string): number {
  console.write(text);
  return exit.clean;
}
