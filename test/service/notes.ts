import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readPractice } from '../../src/note/read.ts';
import { tablesOf, type Tables } from '../../src/practice/tables.ts';
import { analyse, type Analysis } from '../../src/service/index.ts';

const root = join(import.meta.dirname, '..', '..');

export interface Sample {
  readonly name: string;
  readonly text: string;
}

const read = (folder: string, name: string): Sample => ({
  name,
  text: readFileSync(join(root, folder, name), 'utf8'),
});

/** The invented notes that come with the project, and the example of the format. */
export const samples: readonly Sample[] = ['samples', 'test/fixtures'].flatMap((folder) =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.wheal.yaml') && !name.endsWith('practice.wheal.yaml'))
    .sort()
    .map((name) => read(folder, name)),
);

const example = /^```yaml(?: as-of \d{4}-\d{2}-\d{2})?\n([\s\S]*?)^```/gm;

/** The good and bad examples of the pages of all checks. */
export const pageExamples: readonly Sample[] = readdirSync(join(root, 'src/checks'), {
  recursive: true,
  encoding: 'utf8',
})
  .filter((name) => name.endsWith('.md') && !name.startsWith('practice'))
  .sort()
  .flatMap((name) =>
    [...read('src/checks', name).text.matchAll(example)].map((match, at) => ({
      name: `${name}, example ${at + 1}`,
      text: match[1] ?? '',
    })),
  );

/** The tables of the samples' practice. */
export const sampleTables: Tables = tablesOf(readPractice(read('samples', 'practice.wheal.yaml').text).value);

export const today = '2026-04-30';

export const analysed = (text: string, tables: Tables = sampleTables): Analysis =>
  analyse(text, { tables, today });
