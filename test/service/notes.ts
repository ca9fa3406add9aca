import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Tables } from '../../src/practice/tables.ts';
import { analyse, type Analysis } from '../../src/service/index.ts';
import { tablesIn } from '../practice/tables-of.ts';

const root = join(import.meta.dirname, '..', '..');

export interface Sample {
  readonly name: string;
  readonly text: string;
  /** The day on which it is judged, where it names one. */
  readonly today?: string;
  /** Its own practice, where it has one. */
  readonly tables?: Tables;
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

const example = /^```yaml(?: (practice)| as-of (\d{4}-\d{2}-\d{2}))?\n([\s\S]*?)^```/gm;

/** The good and bad examples of the pages of all checks; a practice file is before the note that it is for. */
export const pageExamples: readonly Sample[] = readdirSync(join(root, 'src/checks'), {
  recursive: true,
  encoding: 'utf8',
})
  .filter((name) => name.endsWith('.md') && !name.startsWith('practice'))
  .sort()
  .flatMap((name) => {
    let tables: Tables | undefined;
    return [...read('src/checks', name).text.matchAll(example)].flatMap(
      ([, practice, day, text = ''], at): readonly Sample[] => {
        const own = tables;
        tables = practice === undefined ? undefined : tablesIn(text);
        if (practice !== undefined) return [];
        const setting = { ...(day && { today: day }), ...(own && { tables: own }) };
        return [{ name: `${name}, example ${at + 1}`, text, ...setting }];
      },
    );
  });

/** The tables of the samples' practice. */
export const sampleTables: Tables = tablesIn(read('samples', 'practice.wheal.yaml').text);

export const today = '2026-04-30';

export const analysed = (text: string, tables: Tables = sampleTables, day = today): Analysis =>
  analyse(text, { tables, today: day });
