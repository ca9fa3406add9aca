import type { Finding } from '../../src/note/tree/finding.ts';
import { Lines } from '../../src/note/text/lines.ts';
import { afterEdit, atRest, type Shown } from '../../src/service/index.ts';

type Judge = (text: string) => readonly Finding[];

/** Takes a line away and types it again, letter by letter; `seen` is asked after each. */
export function retype(
  note: string,
  row: number,
  judge: Judge,
  seen: (state: Shown, row: number) => void,
): Shown {
  const lines = new Lines(note);
  const words = lines.row(row);
  const start = note.split('\n').slice(0, row).join('\n').length + (row === 0 ? 0 : 1);
  const caret = { line: row, character: 0 };
  const empty = note.slice(0, start) + note.slice(start + words.length);
  let now = afterEdit(
    atRest(note, judge),
    empty,
    { start, end: start + words.length, inserted: '' },
    caret,
    judge,
  );
  seen(now, row);
  for (let length = 0; length < words.length; length++) {
    const at = start + length;
    const letter = words[length] ?? '';
    const text = now.text.slice(0, at) + letter + now.text.slice(at);
    now = afterEdit(now, text, { start: at, end: at, inserted: letter }, caret, judge);
    seen(now, row);
  }
  return now;
}

/** Lines on which something shows that is more than a hint. */
export function rowsOf({ text, findings }: Pick<Shown, 'text' | 'findings'>): number[] {
  const lines = new Lines(text);
  return findings.filter(({ severity }) => severity !== 'hint').map(({ start }) => lines.at(start).line);
}

/** In how many states of typing something shows on another line than the one that is typed, and on any line. */
export class Noise {
  states = 0;
  elsewhere = 0;
  anywhere = 0;

  add(row: number, rows: readonly number[]): void {
    this.states += 1;
    if (rows.length > 0) this.anywhere += 1;
    if (rows.some((one) => one !== row)) this.elsewhere += 1;
  }
}
