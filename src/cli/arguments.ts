import { parseArgs } from 'node:util';
import { readMoment } from '../note/values/dates.ts';
import type { IsoDate } from '../note/values/values.ts';

/** The command line can't be understood, or names nothing that can be judged: exit code 2 with one line. */
export class UsageError extends Error {}

export interface Arguments {
  readonly paths: readonly string[];
  readonly options: ReadonlyMap<string, string>;
}

/**
 * Reads options that each take a value, and everything else as paths.
 * @throws UsageError for an unknown option or one without its value
 */
export function readArguments(argv: readonly string[], names: readonly string[]): Arguments {
  try {
    const { values, positionals } = parseArgs({
      args: [...argv],
      options: Object.fromEntries(names.map((name) => [name, { type: 'string' as const }])),
      allowPositionals: true,
    });
    return {
      paths: positionals,
      options: new Map(
        Object.entries(values).flatMap(([key, value]) => (typeof value === 'string' ? [[key, value]] : [])),
      ),
    };
  } catch (error) {
    const [said = ''] = (error instanceof Error ? error.message : String(error)).split(/\n|\. /);
    throw new UsageError(said.replace(/^Option '(--[\w-]+).*' argument .*/, '$1 needs a value'));
  }
}

/** Whether a word without a value is among the words of a command, and the other words. */
export const flagAmong = (argv: readonly string[], flag: string): readonly [boolean, readonly string[]] => [
  argv.includes(flag),
  argv.filter((word) => word !== flag),
];

/** The value of an option that allows only certain words, the first of them being the default. @throws UsageError */
export function choice<Word extends string>(
  { options }: Arguments,
  name: string,
  words: readonly [Word, ...Word[]],
): Word {
  const value = options.get(name) ?? words[0];
  const word = words.find((one) => one === value);
  if (word === undefined)
    throw new UsageError(`--${name} is ${words.join(', ')}; "${value}" is none of them`);
  return word;
}

/** The forms of a document as a usage line names them. */
export const formatNames = (formats: object): string => `[--format ${Object.keys(formats).join('|')}]`;

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
