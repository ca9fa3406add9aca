import type { Finding, Fix, TextEdit } from '../../note/tree/finding.ts';
import type { Check } from '../check.ts';
import { format } from '../sources.ts';

type Row = Pick<Check, 'code' | 'severity' | 'title' | 'why' | 'messages' | 'fix'>;

/** Two spaces for each tab at the beginning of a row; how deep a row was meant to be is a guess. */
function withoutTabs({ text }: { readonly text: string }): readonly Fix[] {
  const edits: TextEdit[] = [...text.matchAll(/^[ ]*\t[ \t]*/gm)].map((match) => ({
    start: match.index,
    end: match.index + match[0].length,
    text: match[0].replace(/\t/g, '  '),
  }));
  return edits.length === 0
    ? []
    : [{ title: 'Indent with spaces instead of tabs', kind: 'spelling', sure: false, edits }];
}

/** Moves a row that is too deep, and with it the rows below that are as deep or deeper, to where it belongs. */
function shiftedBlock({ text }: { readonly text: string }, { data }: Finding): readonly Fix[] {
  if (data === undefined) return [];
  const first = data as TextEdit;
  const depth = first.end - first.start;
  const by = depth - first.text.length;
  const edits: TextEdit[] = [];
  for (let at = first.start; at >= 0 && at < text.length; at = startBehind(text, at)) {
    const indent = indentAt(text, at);
    if (indent === undefined) continue;
    if (indent < depth) break;
    edits.push({ start: at, end: at + by, text: '' });
  }
  return [{ title: 'Line it up with the line above', kind: 'spelling', sure: false, edits }];
}

/** Where the next row begins; -1 after the last. */
const startBehind = (text: string, at: number): number => text.indexOf('\n', at) + 1 || -1;

/** The spaces before a row; undefined for one of spaces alone. */
function indentAt(text: string, start: number): number | undefined {
  let at = start;
  while (text[at] === ' ') at += 1;
  return at === text.length || text[at] === '\n' || text[at] === '\r' ? undefined : at - start;
}

function prepared(title: string, sure: boolean) {
  return (_place: unknown, { data }: Finding): readonly Fix[] =>
    data === undefined ? [] : [{ title, kind: 'spelling', sure, edits: [data as TextEdit] }];
}

const rows: readonly Row[] = [
  {
    code: 'yaml/syntax',
    severity: 'error',
    title: 'A line that cannot be read',
    why: 'What YAML cannot read is not part of the record, and the lines around it may be read wrongly.',
    messages: {
      main: "This can't be read as `key: value`. Put a value with such characters in quotes, or remove the extra character.",
      backslash:
        'Between double quotes a backslash begins a special character, and this one does not exist. Use single quotes.',
      line: '`{key}` begins a line of its own; after another value it is not read. Write it on the next line.',
      comma: 'A comma is missing before this key. Write one between the two values.',
      'complex-key': 'A list or a map is where a key belongs. Write a plain word with a colon after it.',
      'long-key': 'A key may have 1,024 letters; this line is far longer. Put the text after a key.',
      hopeless:
        'There are hundreds of places in this file that cannot be read, the first of them here, and nothing in it was checked. Check whether it is a note at all.',
    },
    fix: (place, finding) =>
      finding.form === 'line'
        ? prepared('Write it on a line of its own', false)(place, finding)
        : prepared('Write the comma', true)(place, finding),
  },
  {
    code: 'yaml/indentation',
    severity: 'error',
    title: 'A line indented too far or not far enough',
    why: 'The spaces at the beginning of a line say what it belongs to. A line out of place is read as part of something else.',
    messages: {
      main: 'This line does not line up with the lines that it belongs to. Give it the same number of spaces at its beginning as they have.',
      deeper:
        '`{key}` is indented further than the line above, whose key has its value already. Line it up with the line above.',
    },
    fix: shiftedBlock,
  },
  {
    code: 'yaml/tab',
    severity: 'error',
    title: 'A tab at the beginning of a line',
    why: 'YAML does not count tabs, so a line that begins with one belongs to nothing.',
    messages: { main: 'A tab cannot indent a line. Use two spaces for each step.' },
    fix: withoutTabs,
  },
  {
    code: 'yaml/directive',
    severity: 'error',
    title: 'A directive of YAML',
    why: 'A line such as %YAML 1.1 asks for other rules, by which the same words mean something else. A note is always read by YAML 1.2.',
    messages: {
      main: 'A line that begins with % asks for other rules of reading. Notes are always read as YAML 1.2; remove this line.',
    },
  },
  {
    code: 'yaml/merge-key',
    severity: 'error',
    title: 'A merge key',
    why: 'The key << would bring in values from elsewhere, so that a reader sees less than the note says. It is not read.',
    messages: {
      main: 'The key `<<` is not used in notes, and what it brings in is not read. Write the values out.',
    },
  },
  {
    code: 'yaml/several-documents',
    severity: 'error',
    title: 'More than one document in a file',
    why: 'One file is one visit. What comes after a line --- would be another document, and is not read.',
    messages: {
      main: 'A second document begins here, and nothing from here on was read. Keep one note in each file, or remove the line `---`.',
    },
  },
  {
    code: 'yaml/duplicate-key',
    severity: 'error',
    title: 'The same key twice',
    why: 'Only one of two equal keys can count, and nobody can tell which was meant. Both spellings of a key are one key.',
    messages: {
      main: '`{typed}` is here a second time, and nobody can tell which is right. Keep the one that is.',
      first: '`{key}` is here first',
    },
  },
];

export const checks: readonly Check[] = rows.map((row) => ({
  ...row,
  sources: [format],
}));
