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
  about:
    'Writes into a file, whole or not at all. A file that exists is replaced only after a question, a note never.',
};

/** For every command that has --out. */
export const force: Option = { name: 'force', about: 'Replaces the file of --out without a question.' };

/** For every command that reads notes. */
export const inputName: Option = {
  name: 'stdin-filename',
  value: 'NAME',
  about: 'The name of the note that - reads: it is reported by it, and judged by the practice file above it.',
};

/** For every command that reads many notes. */
export const filesFrom: Option = {
  name: 'files-from',
  value: 'FILE',
  about: 'Reads the paths from a file too, one a line or each ended by a NUL; - is standard input.',
};

/** What every command understands. */
export const common: readonly Option[] = [
  { name: 'quiet', about: 'Leaves out progress, counts at the end, and remarks on standard error.' },
  { name: 'help', short: 'h', about: 'Shows this help.' },
  { name: 'version', short: 'V', about: 'Shows the version.' },
];
