import type { Finding, Fix } from '../../note/tree/finding.ts';
import type { Check } from '../check.ts';
import { format } from '../sources.ts';

type Row = Pick<Check, 'code' | 'severity' | 'title' | 'why' | 'messages' | 'fix'>;

interface Replacement {
  readonly start?: number;
  readonly end?: number;
  readonly text: string;
}

const spelling = (title: string, sure: boolean, start: number, end: number, text: string): Fix => ({
  title,
  kind: 'spelling',
  sure,
  edits: [{ start, end, text }],
});

/** Puts in what reading has prepared: another text for the finding's range, or for one of its own. */
const replaced =
  (title: string, sure = true) =>
  (_place: unknown, { start, end, data }: Finding): readonly Fix[] => {
    if (data === undefined) return [];
    const change = data as Replacement;
    return [spelling(title, sure, change.start ?? start, change.end ?? end, change.text)];
  };

const rows: readonly Row[] = [
  {
    code: 'yaml/comma-splits',
    severity: 'error',
    title: 'A comma that cuts a value in two',
    why: 'Inside of {…} and […] a value ends at a comma: 1:100,000 would be read as 1:100, which is a thousand times as strong, and 1,5 mL as 1.',
    messages: {
      main: 'Between brackets YAML ends a value at a comma, so only `{read}` of `{text}` would be read. Put the whole value in quotes.',
    },
    fix: replaced('Put the whole value into quotes'),
  },
  {
    code: 'yaml/comment-swallows',
    severity: 'warning',
    title: 'Words lost after a #',
    why: 'YAML takes a # after a space for the beginning of a comment. What comes after it is not part of the record.',
    messages: {
      main: '`{text}` counts as a comment, not as part of the value. Put the value in quotes; or write a space after the # if a comment is meant.',
      bracket:
        'From `{text}` on, the line counts as a comment, the closing bracket too. Put the value in quotes.',
    },
    fix: replaced('Put the whole value into quotes'),
  },
  {
    code: 'yaml/needs-quotes',
    severity: 'error',
    title: 'A value that YAML takes for something else',
    why: 'Some characters mean something to YAML at the beginning of a value, and a colon with a space after it begins a new key. Without quotes the words are lost or read as something else.',
    messages: {
      main: "`{text}` can't be read as written. Put it in quotes.",
      sign: 'A value that begins with `{sign}` means something else to YAML, and is not read. Put `{text}` in quotes.',
      colon: 'The colon in `{text}` would begin a new key, and the value is not read. Put it in quotes.',
    },
    fix: replaced('Put the value into quotes'),
  },
  {
    code: 'yaml/bare-question-mark',
    severity: 'error',
    title: 'A single question mark',
    why: 'A single question mark has a meaning in YAML and damages the note. What is not yet known is written ??.',
    messages: { main: 'A single `?` has another meaning in YAML. Write `??` for what is not yet known.' },
    fix: (_place, { start, end }) => [spelling('Write ??', true, start, end, '??')],
  },
  {
    code: 'yaml/runs-on',
    severity: 'warning',
    title: 'A line that runs on from the one above',
    why: 'A line that is indented below a value belongs to that value. A key without its colon vanishes in it.',
    messages: {
      main: '`{word}` is read as part of the value above, so that value is not judged. If it is a key, align it with the key above and add its colon; if it is text, put the value on one line.',
      more: '{count} more lines run on from the ones above.',
    },
  },
  {
    code: 'yaml/missing-colon',
    severity: 'error',
    title: 'A key without its colon',
    why: 'A word without a colon is neither a key nor a value, and the lines around it are lost with it.',
    messages: {
      main: '`{text}` has no colon after it, so it is not a key yet. Write a colon, a space and the value.',
      blank: '`{key}` needs a space after its colon; without it `{text}` is not read.',
    },
    fix: replaced('Write the missing character'),
  },
  {
    code: 'yaml/unclosed-quote',
    severity: 'error',
    title: 'A quote that is not closed',
    why: 'Everything after an open quote would be one text, the following lines too.',
    messages: { main: 'The quote {quote} that opens here is not closed. Close it at the end of the value.' },
    fix(_place, { data }) {
      const { at, text, sure } = data as { at: number; text: string; sure: boolean };
      return [spelling('Close the quote', sure, at, at, text)];
    },
  },
  {
    code: 'yaml/unclosed-bracket',
    severity: 'error',
    title: 'A bracket that is not closed',
    why: 'Without its closing bracket nobody can tell where a list or a map ends.',
    messages: { main: 'The bracket {open} that opens here is not closed. Write {close} where it ends.' },
    fix(_place, { data, args }) {
      const { at } = data as { at: number };
      return [spelling('Close the bracket', false, at, at, String(args['close']))];
    },
  },
];

export const checks: readonly Check[] = rows.map((row) => ({
  ...row,
  sources: [format],
}));
