import { readMoment } from '../note/dates.ts';
import type { IsoDate } from '../note/values.ts';

/** The command line can't be understood, or names nothing that can be judged: exit code 2 with one line. */
export class UsageError extends Error {}

export interface Arguments {
  readonly paths: readonly string[];
  readonly options: ReadonlyMap<string, string>;
}

/**
 * Reads options that each take a value, and everything else as paths. Node's own reader of arguments takes longer to
 * load than a note to read.
 * @throws UsageError for an unknown option or one without its value
 */
export function readArguments(argv: readonly string[], names: readonly string[]): Arguments {
  const paths: string[] = [];
  const options = new Map<string, string>();
  for (let at = 0; at < argv.length; at += 1) {
    const word = argv[at]!;
    if (word === '--') return { paths: [...paths, ...argv.slice(at + 1)], options };
    if (isOption(word)) {
      const { name, value } = optionOf(word, names);
      if (value === undefined) at += 1;
      options.set(name, value ?? valueBehind(name, argv[at]));
    } else paths.push(word);
  }
  return { paths, options };
}

/** `-` stands for standard input. */
const isOption = (word: string): boolean => word.startsWith('-') && word !== '-';

/** `--name`, or `--name=value`. */
function optionOf(word: string, names: readonly string[]): { name: string; value: string | undefined } {
  const [, name = '', value] = /^--([^=]+)(?:=(.*))?$/s.exec(word) ?? [];
  if (names.includes(name)) return { name, value };
  throw new UsageError(
    `Unknown option '${name === '' ? (word.startsWith('--') ? word : word.slice(0, 2)) : `--${name}`}'`,
  );
}

function valueBehind(name: string, next: string | undefined): string {
  if (next === undefined) throw new UsageError(`Option '--${name} <value>' argument missing`);
  if (isOption(next)) throw new UsageError(`Option '--${name}' argument is ambiguous.`);
  return next;
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
    throw new UsageError(`--${name} is ${words.join(', ')}; "${value}" is none of them`);
  return word;
}

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
