import { parseArgs, type ParseArgsConfig } from 'node:util';
import { readMoment } from '../../note/values/dates.ts';
import type { IsoDate } from '../../note/values/values.ts';
import { nearestKey } from '../../note/text/nearest.ts';
import type { Option } from './options.ts';

/** The command line can't be understood, or names nothing that can be judged: exit code 2 with one line. */
export class UsageError extends Error {}

export interface Arguments {
  readonly paths: readonly string[];
  readonly options: ReadonlyMap<string, string>;
  /** The options without a value that were given. */
  readonly flags: ReadonlySet<string>;
}

/**
 * Reads the options of a table, and everything else as paths.
 * @throws UsageError for an unknown option, one without its value, or one with a value that takes none
 */
export function readArguments(argv: readonly string[], table: readonly Option[]): Arguments {
  try {
    const { values, positionals } = parseArgs({
      args: [...argv],
      options: Object.fromEntries(table.map((option) => [option.name, parsing(option)])),
      allowPositionals: true,
    });
    const given = Object.entries(values);
    return {
      paths: positionals,
      options: new Map(given.flatMap(([key, value]) => (typeof value === 'string' ? [[key, value]] : []))),
      flags: new Set(given.flatMap(([key, value]) => (value === true ? [key] : []))),
    };
  } catch (error) {
    const [said = ''] = (error instanceof Error ? error.message : String(error)).split(/\n|\. /);
    throw new UsageError(inOurWords(said, table));
  }
}

const parsing = ({ value, words, short }: Option): ParseArgsOption => ({
  type: value === undefined && words === undefined ? 'boolean' : 'string',
  ...(short === undefined ? {} : { short }),
});

type ParseArgsOption = NonNullable<ParseArgsConfig['options']>[string];

/** What Node says of words that can't be read, in ours. */
function inOurWords(said: string, table: readonly Option[]): string {
  const unknown = /^Unknown option '(-[^']*)'/.exec(said)?.[1];
  if (unknown !== undefined) {
    const names = table.map(({ name }) => `--${name}`);
    return `there is no option ${unknown}${letterMeant(unknown, names) ?? didYouMean(unknown, names)}`;
  }
  return said
    .replace(/^Option '(?:-\w, )?(--[\w-]+).*' argument .*/, '$1 needs a value')
    .replace(/^Option '(?:-\w, )?(--[\w-]+)' does not take an argument/, '$1 takes no value');
}

/** Names the one option that begins with a letter, where somebody wrote that letter alone. */
function letterMeant(unknown: string, names: readonly string[]): string | undefined {
  if (!/^-[a-z]$/.test(unknown)) return undefined;
  const [only, other] = names.filter((name) => name.startsWith(`-${unknown}`));
  return only === undefined || other !== undefined ? '' : `; did you mean ${only}?`;
}

/** Names the known word nearest to one that is not known; empty where none is near. */
export function didYouMean(word: string, known: readonly string[]): string {
  const near = nearestKey(word, new Map(known.map((one) => [one, one])));
  return near === undefined ? '' : `; did you mean ${near.word}?`;
}

/** The value of an option that allows only certain words, the first of them being the default. @throws UsageError */
export function choice<Word extends string>(
  { options }: Arguments,
  name: string,
  words: readonly [Word, ...Word[]],
): Word {
  const value = options.get(name) ?? words[0];
  const word = words.find((one) => one === value);
  if (word === undefined)
    throw new UsageError(
      `--${name} is ${words.join(', ')}; "${value}" is none of them${didYouMean(value, words)}`,
    );
  return word;
}

/** The form that is asked for, the first of them where none is. @throws UsageError */
export const formatOption = <Name extends string>(
  given: Arguments,
  formats: Readonly<Record<Name, unknown>>,
): Name => choice(given, 'format', Object.keys(formats) as [Name, ...Name[]]);

/** The value of an option that is a calendar date, or `otherwise` where it isn't given. @throws UsageError */
export function dateOption({ options }: Arguments, name: string, otherwise: () => IsoDate): IsoDate {
  const value = options.get(name);
  if (value === undefined) return otherwise();
  if (!/^\d{4}-\d{2}-\d{2}$/.test(value) || readMoment(value).value?.date !== value)
    throw new UsageError(`--${name} is a date such as 2026-03-02; "${value}" is not`);
  return value;
}

/** The one path that a command takes. @throws UsageError for none or several */
export function onlyPath({ paths }: Arguments, command: string): string {
  const [path, ...others] = paths;
  if (path === undefined) throw new UsageError(`${command} needs a note`);
  if (others.length > 0) throw new UsageError(`${command} takes one note, not ${paths.length}`);
  return path;
}
