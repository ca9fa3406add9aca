import assert from 'node:assert/strict';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { catalogue } from '../../src/checks/index.ts';
import { citation } from '../../src/reference/sources/index.ts';
import { sites, siteTraits } from '../../src/reference/sites.ts';

const folder = join(import.meta.dirname, '..', '..', 'src', 'reference');

/** Words of a row, which judge nothing by themselves. */
const words: ReadonlySet<string> = new Set(['name', 'synonyms', 'tradeNames', 'kind', 'lasts']);

/**
 * Exports that judge by the meaning of their words alone, with the keys that say what a word means; and numbers that
 * are Wheal's own, as their comments say. A table that is in none of the lists has to name source and mark in each row.
 */
const meanings: Readonly<Record<string, readonly string[]>> = {
  allergens: ['anesthetics', 'covers', 'mild', 'onlyListed'],
  reactions: [],
  authorities: ['country', 'choosable'],
  otherConditions: [],
  consents: [],
  otherPersons: [],
  patientWords: [],
  depths: ['reaches'],
  events: [],
  findingsToAct: ['urgent'],
  scarRisks: [],
  recalls: [],
  helpers: [],
  instruments: [],
  laboratoryTests: ['like', 'tissue'],
  layers: [],
  lesions: ['says'],
  media: ['fixes'],
  otherMedicines: [],
  noMishaps: [],
  relations: [],
  techniques: [],
};
const ownNumbers: ReadonlySet<string> = new Set(['oldAge', 'toleranceFrom', 'weightAges', 'lengtheningStep']);
/** Not tables of facts: how words are looked for, the two origins that rows share, and a row that others are made of. */
const tools: ReadonlySet<string> = new Set([
  'irrelevantAllergens',
  'slowTests',
  'reportHeads',
  'common',
  'meaning',
  'ordinary',
  'siteTraits',
  'sites',
]);

const marks = /^(?:Q|Q2|M|common|format)$/;

/** Whether a mark claims more than its citation says: what is restated was not read itself, and memory is no reading. */
function isTooSure({ source, mark }: { readonly source: string; readonly mark: string }): boolean {
  const text = citation(source);
  if (/from memory/i.test(text)) return mark !== 'M';
  return /restated|secondary page/i.test(text) && mark !== 'Q2' && mark !== 'M';
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

/** Whether a value names a source that there is, and how sure it is. */
function isSourced(value: unknown): boolean {
  if (!isObject(value)) return false;
  const { source, mark } = value;
  if (typeof source !== 'string' || typeof mark !== 'string') return false;
  assert.notEqual(citation(source), '');
  assert.match(mark, marks);
  assert.equal(isTooSure({ source, mark }), false, `${source} is ${mark}`);
  return true;
}

/** A fact, a list of facts, or facts by their names. */
function areSourced(value: unknown): boolean {
  if (isSourced(value)) return true;
  if (Array.isArray(value)) return value.every(areSourced);
  return isObject(value) && Object.values(value).length > 0 && Object.values(value).every(areSourced);
}

/** The keys of a row that judge and have no source. */
function unsourced(row: unknown, meant: readonly string[]): readonly string[] {
  if (areSourced(row)) return [];
  assert.ok(isObject(row), `${String(row)} is no row`);
  return Object.entries(row)
    .filter(([key, value]) => value !== undefined && !words.has(key) && !meant.includes(key))
    .filter(([, value]) => !areSourced(value))
    .map(([key]) => key);
}

const rowsOf = (table: unknown): readonly unknown[] => {
  if (table instanceof Map) return [...table.values()];
  if (Array.isArray(table)) return table;
  return isSourced(table) ? [table] : Object.values(table as object);
};

const isFact = (value: unknown): boolean => typeof value !== 'function' && !(value instanceof RegExp);

describe('the tables of reference', () => {
  const files = readdirSync(folder).filter((file) => file.endsWith('.ts'));

  for (const file of files)
    it(`${file}: each row that judges has a source and a mark`, async () => {
      const exported = (await import(pathToFileURL(join(folder, file)).href)) as Readonly<
        Record<string, unknown>
      >;
      const faults = Object.entries(exported)
        .filter(([name, value]) => isFact(value) && !tools.has(name) && !ownNumbers.has(name))
        .flatMap(([name, table]) =>
          rowsOf(table).flatMap((row) =>
            unsourced(row, meanings[name] ?? []).map(
              (key) =>
                `${name}: ${isObject(row) ? JSON.stringify(row['name'] ?? row) : ''} has ${key} without source and mark`,
            ),
          ),
        );
      assert.deepEqual(faults, []);
    });

  it('have no list here that is about a table that is gone', async () => {
    const names = new Set<string>();
    for (const file of files)
      for (const name of Object.keys((await import(pathToFileURL(join(folder, file)).href)) as object))
        names.add(name);
    for (const name of [...Object.keys(meanings), ...ownNumbers, ...tools]) assert.ok(names.has(name), name);
  });

  it('say where each trait of a site is from', () => {
    const apart = new Set(['name', 'synonyms', 'region', 'group', 'danger', 'narrowed', 'digit']);
    const traits: Readonly<Record<string, unknown>> = siteTraits;
    for (const trait of Object.values(traits)) assert.ok(isSourced(trait));
    for (const site of sites) {
      for (const key of Object.keys(site)) assert.ok(apart.has(key) || key in traits, `${site.name}: ${key}`);
      if (site.danger !== undefined) assert.ok(isSourced(site.danger), site.name);
    }
  });

  it('claim no more than their citations say, and nor do the checks', () => {
    const faults = catalogue.flatMap(({ code, sources }) =>
      sources.filter(isTooSure).map(({ source, mark }) => `${code}: ${source} is ${mark}`),
    );
    assert.deepEqual(faults, []);
    assert.ok(isTooSure({ source: 'us-label-bupivacaine-children', mark: 'Q' }));
    assert.ok(isTooSure({ source: 'bnf', mark: 'Q2' }));
  });

  it('would show a row without a source', () => {
    assert.deepEqual(unsourced({ name: 'x', synonyms: [], stops: 'heat' }, []), ['stops']);
    assert.deepEqual(unsourced({ name: 'x', synonyms: [], says: 'flat' }, ['says']), []);
    assert.deepEqual(unsourced({ name: 'x', keeps: { days: 5, source: 'format', mark: 'format' } }, []), []);
    assert.deepEqual(unsourced({ name: 'x', days: 5, source: 'format', mark: 'format' }, []), []);
    assert.throws(() => unsourced({ days: 5, source: 'no such source', mark: 'Q' }, []), /no source/);
  });
});
