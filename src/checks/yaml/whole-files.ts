import type { Check } from '../check.ts';
import { format } from '../sources.ts';

type Row = Pick<Check, 'code' | 'title' | 'why' | 'messages'>;

/** What refuses a file as a whole: each is the only finding of its file. */
const rows: readonly Row[] = [
  {
    code: 'yaml/too-large',
    title: 'A file far too large for a note',
    why: 'A note of one visit has about sixty lines. A file of this size is something else, and reading it would freeze the editor.',
    messages: {
      main: 'This file has {count} KiB and was not read; a note may have 512 KiB. Check whether it is a note at all.',
      rows: 'This file has {count} lines and was not read; a note may have 20,000. Check whether it is a note at all.',
      values:
        'This file has {count} values between brackets and was not read; a note may have 20,000. Check whether it is a note at all.',
      marks:
        'This file has {count} quotes and other characters of YAML and was not read; a note may have 60,000. Check whether it is a note at all.',
    },
  },
  {
    code: 'yaml/too-deep',
    title: 'Nested far deeper than a note',
    why: 'A note needs fewer than ten levels. Thousands of them come from a slip or an attack, and reading them would exhaust the machine.',
    messages: {
      main: 'The lines or brackets here are nested or indented far too deep, and the file was not read. A note needs fewer than ten levels.',
    },
  },
  {
    code: 'yaml/not-text',
    title: 'Not a text file',
    why: 'A picture or a program that was given the name of a note has nothing that can be checked.',
    messages: {
      main: 'This file has characters that no text has, and was not read. Check whether it is a note at all.',
    },
  },
  {
    code: 'yaml/empty',
    title: 'An empty note',
    why: 'An empty file, or one with comments only, records nothing.',
    messages: {
      main: 'There is nothing in this note yet. Begin with `visit`, `patient` and `procedures`.',
      practice:
        'There is nothing in this practice file yet, so it changes nothing. Begin with `name` and `telephone`.',
    },
  },
  {
    code: 'yaml/anchor-or-alias',
    title: 'An anchor or alias of YAML',
    why: 'An alias repeats what is written elsewhere, so that a reader sees less than the note says. Notes do without them, and none is ever followed.',
    messages: {
      main: 'A name for another part of the file (`&name`, `*name`) is not used in notes, and this one was not read. Write the value out in each place.',
    },
  },
  {
    code: 'shape/not-a-note',
    title: 'A list or a text instead of a note',
    why: 'A note is a map of keys with values. Nothing in any other file can be checked.',
    messages: {
      main: 'This is not a note. Begin with keys: `visit: YYYY-MM-DD`, `patient`, `procedures`.',
      list: 'This is a list, not a note. Begin with keys: `visit: YYYY-MM-DD`, `patient`, `procedures`.',
      text: 'This is a bare text, not a note. Begin with keys: `visit: YYYY-MM-DD`, `patient`, `procedures`.',
      practice:
        'This is not a practice file, and nothing in it is used. Begin with keys: `name`, `telephone`, `stock`.',
    },
  },
];

const refusals: readonly Check[] = rows.map((row) => ({
  ...row,
  severity: 'error',
  sources: [format],
}));

export const checks: readonly Check[] = [
  ...refusals,
  {
    code: 'shape/newer-format',
    severity: 'warning',
    title: 'A newer format than this version reads',
    why: 'A later version of the format may mean something else by the same words, so that no check would be safe.',
    sources: [format],
    messages: {
      main: 'This file says that it has format {version}; this version of Wheal reads format {own} and has checked nothing in it. Update Wheal.',
    },
  },
];
