import type { Finding, Fix, TextEdit } from '../../note/tree/finding.ts';
import type { Check } from '../check.ts';
import { format } from '../sources.ts';

type Row = Pick<Check, 'code' | 'severity' | 'title' | 'why' | 'messages' | 'fix'>;

/** Two blanks for each tab at the beginning of a row; how deep a row was meant to stand is a guess. */
function withoutTabs({ text }: { readonly text: string }): readonly Fix[] {
  const edits: TextEdit[] = [...text.matchAll(/^[ ]*\t[ \t]*/gm)].map((match) => ({
    start: match.index,
    end: match.index + match[0].length,
    text: match[0].replace(/\t/g, '  '),
  }));
  return edits.length === 0
    ? []
    : [{ title: 'Indent with blanks instead of tabs', kind: 'spelling', sure: false, edits }];
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
  return [{ title: 'Line it up with the row above', kind: 'spelling', sure: false, edits }];
}

/** Where the next row begins; -1 behind the last. */
const startBehind = (text: string, at: number): number => text.indexOf('\n', at) + 1 || -1;

/** The blanks before a row; undefined for one of blanks alone. */
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
    title: 'A row that can not be read',
    why: 'What YAML can not read is not part of the record, and the rows around it may be read wrongly.',
    messages: {
      main: "This can't be read as `key: value`. Put a value that holds such signs into quotes, or take the extra sign out.",
      backslash:
        'Between double quotes a backslash begins a sign of its own, and this one does not exist. Use single quotes.',
      line: '`{key}` begins a line of its own; behind another value it is not read. Write it on the next line.',
      comma: 'A comma is missing before this key. Write one between the two values.',
      'complex-key': 'A list or a map stands where a key belongs. Write a plain word with a colon behind it.',
      'long-key': 'A key may have 1,024 letters; this row is far longer. Put the text behind a key.',
      hopeless:
        'There are hundreds of places in this file that can not be read, the first of them here, and nothing in it was checked. Check whether it is a note at all.',
    },
    fix: (place, finding) =>
      finding.form === 'line'
        ? prepared('Write it on a line of its own', false)(place, finding)
        : prepared('Write the comma', true)(place, finding),
  },
  {
    code: 'yaml/indentation',
    severity: 'error',
    title: 'A row that stands too far in or out',
    why: 'The blanks at the beginning of a row say to what it belongs. A row that stands askew is read as part of something else.',
    messages: {
      main: 'This row does not line up with the rows that it belongs to. Give it the same number of blanks at its beginning as they have.',
      deeper:
        '`{key}` stands further in than the row above, whose key has its value already. Line it up with the row above.',
    },
    fix: shiftedBlock,
  },
  {
    code: 'yaml/tab',
    severity: 'error',
    title: 'A tab at the beginning of a row',
    why: 'YAML does not count tabs, so a row that begins with one belongs to nothing.',
    messages: { main: 'A tab can not indent a row. Use two blanks for each step.' },
    fix: withoutTabs,
  },
  {
    code: 'yaml/directive',
    severity: 'error',
    title: 'A directive of YAML',
    why: 'A row such as %YAML 1.1 asks for other rules, by which the same words mean something else. A note is always read by YAML 1.2.',
    messages: {
      main: 'A row that begins with % asks for other rules of reading. Notes are always read as YAML 1.2; take this row out.',
    },
  },
  {
    code: 'yaml/merge-key',
    severity: 'error',
    title: 'A merge key',
    why: 'The key << would bring in values that stand elsewhere, so that a reader sees less than the note says. It is not read.',
    messages: {
      main: 'The key `<<` is not used in notes, and what it brings in is not read. Write the values out.',
    },
  },
  {
    code: 'yaml/several-documents',
    severity: 'error',
    title: 'More than one document in a file',
    why: 'One file is one visit. What stands behind a row --- would be another document, and is not read.',
    messages: {
      main: 'A second document begins here, and nothing from here on was read. Keep one note in each file, or take the row `---` out.',
    },
  },
  {
    code: 'yaml/duplicate-key',
    severity: 'error',
    title: 'The same key twice',
    why: 'Of two equal keys only one can count, and nobody can tell which was meant. Both spellings of a key are one key.',
    messages: {
      main: '`{typed}` stands here a second time; only the first counts. Keep the one that is right.',
      first: '`{key}` stands here first',
    },
  },
];

export const checks: readonly Check[] = rows.map((row) => ({
  ...row,
  sources: [format],
}));
