/** One option of a command, as `--help`, the completions of shells and the manual page show it. */
export interface Option {
  /** Without the two hyphens. */
  readonly name: string;
  /** What its value is called in the help; absent for an option without a value. */
  readonly value?: string;
  /** The only values there are, the usual one first. */
  readonly words?: readonly string[];
  /** Whether the command does nothing without it. */
  readonly needed?: true;
  /** A single letter that means the same after one hyphen. */
  readonly short?: string;
  /** What it does, in one sentence. */
  readonly about: string;
}

/** The form of an output, one of some names. */
export const formatOf = (names: readonly string[]): Option => ({
  name: 'format',
  words: names,
  about: `The form of the output; ${names[0] ?? ''} where none is named.`,
});

export const asOf: Option = {
  name: 'as-of',
  value: 'DATE',
  about: 'Judges as of this day, such as 2026-03-02, and not of today.',
};

export const out: Option = {
  name: 'out',
  value: 'FILE',
  about: 'Writes into a file, whole or not at all. A file that exists is replaced only after a question.',
};

/** What every command understands. */
export const common: readonly Option[] = [
  { name: 'help', short: 'h', about: 'Shows this help.' },
  { name: 'version', short: 'V', about: 'Shows the version.' },
];
