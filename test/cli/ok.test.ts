import assert from 'node:assert/strict';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readNote, readPractice } from '../../src/note/read.ts';
import { readSite } from '../../src/note/words/site.ts';
import { referenceTables, tablesOf, type Tables } from '../../src/practice/tables.ts';
import { wheal } from './run.ts';

const folder = join(import.meta.dirname, '..', 'fixtures', 'ok');
const suffix = '.wheal.yaml';
const practiceName = 'practice.wheal.yaml';

/** A row of the table in the folder's page. */
interface Row {
  readonly note: string;
  readonly method: string;
  readonly region: string;
  readonly routine: string;
  readonly asOf: string;
  readonly purpose: string;
}

interface Found {
  readonly code: string;
  readonly severity: string;
  readonly message: string;
}

const rows: readonly Row[] = readFileSync(join(folder, 'README.md'), 'utf8')
  .split('\n')
  .filter((line) => line.startsWith('| ') && !line.startsWith('| note '))
  .map((line) => {
    const [, note = '', method = '', region = '', routine = '', asOf = '', purpose = ''] = line
      .split('|')
      .map((cell) => cell.trim());
    return { note, method, region, routine, asOf, purpose };
  });

const pathOf = (note: string): string => join(folder, `${note}${suffix}`);

/** Everything above information that is found in one file, in plain words. */
async function loudIn(path: string, day: string): Promise<readonly string[]> {
  const { out, err } = await wheal(['check', path, '--format', 'json', '--as-of', day], { cwd: folder });
  const { files } = JSON.parse(out === '' ? `{"files": [], "error": ${JSON.stringify(err)}}` : out) as {
    files: readonly { readonly findings: readonly Found[]; readonly dose?: { readonly judged: boolean } }[];
  };
  assert.equal(files.length, 1, err);
  return files
    .flatMap(({ findings }) => findings)
    .filter(({ severity }) => severity === 'error' || severity === 'warning')
    .map(({ code, severity, message }) => `${severity} ${code}: ${message}`);
}

function tablesFor({ routine }: Row): Tables {
  const path = join(folder, routine, practiceName);
  return existsSync(path) ? tablesOf(readPractice(readFileSync(path, 'utf8')).value) : referenceTables;
}

/** What the procedures of a note have in common: words of the tables, each once. */
const distinct = (words: readonly (string | undefined)[]): string =>
  [...new Set(words.map((word) => word ?? '?'))].join(', ');

function methodAndRegion(row: Row): Pick<Row, 'method' | 'region'> {
  const tables = tablesFor(row);
  const procedures = readNote(readFileSync(pathOf(row.note), 'utf8')).value?.procedures ?? [];
  return {
    method: distinct(procedures.map(({ method }) => tables.methods.find(method?.value ?? '')?.name)),
    region: distinct(procedures.map(({ site }) => readSite(site?.value ?? '', tables.sites)?.base.region)),
  };
}

/** The notes and practice files in the folder, without their suffix. */
const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .map((path) => path.replaceAll('\\', '/'))
  .filter((path) => path.endsWith(suffix));
const practices = files.filter((path) => path.endsWith(practiceName));
const notes = files
  .filter((path) => !path.endsWith(practiceName))
  .map((path) => path.slice(0, -suffix.length));

describe('right notes', () => {
  it('are many, and each stands in the table once', () => {
    assert.ok(notes.length >= 64, `${notes.length} notes`);
    assert.deepEqual(rows.map(({ note }) => note).sort(), [...notes].sort());
  });

  it('differ in method, region or routine', () => {
    const seen = new Map<string, string>();
    for (const { note, method, region, routine } of rows) {
      const key = [method, region, routine].join(' | ');
      assert.equal(seen.get(key), undefined, `${note}: ${key}`);
      seen.set(key, note);
    }
  });

  for (const row of rows)
    describe(row.note, () => {
      it('is what its row of the table says', () => {
        const { method, region, routine } = row;
        assert.deepEqual({ method, region }, methodAndRegion(row));
        assert.equal(routine, row.note.includes('/') ? row.note.split('/')[0] : 'default');
        const [first = '', second = ''] = readFileSync(pathOf(row.note), 'utf8').split(/\r?\n/);
        assert.match(first, /^\uFEFF?# Invented: /);
        assert.equal(second, `# For: ${row.purpose}.`);
      });

      it(`gives no finding above information on ${row.asOf}`, async () => {
        assert.deepEqual(await loudIn(pathOf(row.note), row.asOf), []);
      });
    });

  for (const path of practices)
    it(`${path} gives no finding above information`, async () => {
      assert.deepEqual(await loudIn(join(folder, path), '2026-03-02'), []);
    });

  it('keep the line ends and the mark that they are there for', () => {
    assert.match(readFileSync(pathOf('crlf'), 'utf8'), /^(?:[^\n]*\r\n)+$/);
    assert.match(readFileSync(pathOf('byte-order-mark'), 'utf8'), /^\uFEFF/);
  });
});
