import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** One row of a file, by the names of its header. */
export type Row = Readonly<Record<string, string>>;

export const topics = [
  'limits',
  'creams',
  'strengths',
  'sulfite-and-preservative',
  'suture-windows',
  'media',
  'weights',
  'follow-up',
  'epinephrine',
] as const;

export type Topic = (typeof topics)[number];

const field = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r?\n|$)/y;

/** Rows of RFC 4180 text, each as long as its header; throws where one is not. */
export function parseCsv(text: string): readonly Row[] {
  const lines: string[][] = [[]];
  field.lastIndex = 0;
  while (field.lastIndex < text.length) {
    const match = field.exec(text);
    if (match === null) throw new Error(`Not CSV: line ${lines.length}`);
    lines.at(-1)!.push(match[1]?.replaceAll('""', '"') ?? match[2]!);
    if (match[3] !== ',') lines.push([]);
  }
  const [header = [], ...rows] = lines.filter(({ length }) => length > 0);
  return rows.map((row) => {
    if (row.length !== header.length) throw new Error(`Not as long as its header: ${row.join(',')}`);
    return Object.fromEntries(header.map((name, at) => [name, row[at]!]));
  });
}

/** The rows of a file beside this one. */
export const rowsOf = (name: string): readonly Row[] =>
  parseCsv(readFileSync(join(import.meta.dirname, `${name}.csv`), 'utf8'));
