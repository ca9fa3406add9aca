import assert from 'node:assert/strict';
import { readInjectionLine } from '../../src/note/words/dictated.ts';
import { phrasesOf } from '../../src/note/words/phrases.ts';
import type { WordTable } from '../../src/note/words/word-table.ts';
import { referenceTables } from '../../src/practice/tables.ts';
import { citation } from '../../src/reference/sources/index.ts';
import { tradeNames } from '../../src/reference/trade-names.ts';
import type { WordRow } from '../../src/reference/types.ts';

const { agents, allergens, bloodThinners, cautions, closures, dressings, hemostasis, implants } =
  referenceTables;
const { lengthening, materials, media, otherMedicines, preparations } = referenceTables;
const tables: Readonly<Record<string, WordTable<WordRow>>> = {
  agents,
  allergens,
  bloodThinners,
  cautions,
  closures,
  dressings,
  hemostasis,
  implants,
  lengthening,
  materials,
  media,
  otherMedicines,
  preparations,
};

/** The trade names that a table reads as one of its rows. */
const namesOf = (table: WordTable<WordRow>): readonly string[] =>
  table.rows.flatMap((row) => row.tradeNames ?? []);
/** A name that the table of trade names has for a generic word. */
const nameOf = (generic: string): string => {
  const found = tradeNames.find((one) => one.generic === generic);
  assert.ok(found, `a trade name for ${generic}`);
  return found.name;
};

describe('trade names', () => {
  it('are each read by a table, as the row of the generic word and in no table as another', () => {
    for (const { name, generic } of tradeNames) {
      const read = Object.entries(tables).filter(([, table]) => table.find(name) !== undefined);
      assert.notEqual(read.length, 0, `${name} is ${generic}, which no table knows`);
      for (const [key, table] of read)
        assert.equal(table.find(name), table.find(generic), `${name} in ${key}`);
    }
  });

  it('have a source and a mark that says how sure they are', () => {
    for (const { name, source, mark } of tradeNames) {
      assert.notEqual(citation(source), '', name);
      assert.ok(['Q', 'Q2', 'M'].includes(mark), name);
    }
  });

  it('are no generic words themselves, and stand once', () => {
    const plain = (word: string): string => word.toLowerCase().replace(/[\s-]+/g, ' ');
    const generic = new Map(
      Object.entries(tables).flatMap(([table, { rows }]) =>
        rows.flatMap(({ name, synonyms }) =>
          [name, ...synonyms].map((word) => [plain(word), table] as const),
        ),
      ),
    );
    assert.ok(generic.size > 1000);
    const seen = new Set<string>();
    for (const { name } of tradeNames) {
      assert.ok(!seen.has(plain(name)), `${name} is there twice`);
      seen.add(plain(name));
      assert.equal(generic.get(plain(name)), undefined, name);
    }
  });

  it('are found in free text', () => {
    for (const table of Object.values(tables))
      for (const name of namesOf(table)) {
        const [mention, ...others] = phrasesOf(table).mentionsIn(`takes ${name} daily`);
        assert.equal(mention?.row, table.find(name), name);
        assert.equal(others.length, 0, name);
      }
  });

  it('are not among the words that may be written', () => {
    for (const table of Object.values(tables)) {
      const written = new Set(table.words);
      for (const name of namesOf(table)) {
        const plain = name.toLowerCase().replace(/[\s-]+/g, ' ');
        assert.ok(!written.has(plain), name);
        assert.ok([...table.wordsRead].includes(plain), name);
      }
    }
  });

  it('give the agent of a dictated line, and nothing else', () => {
    const name = nameOf('articaine');
    const line = readInjectionLine(`1.5 mL ${name} 4%`);
    assert.deepEqual(
      line.fields.map(({ key }) => key),
      ['volume', 'agent', 'concentration'],
    );
  });

  it('of a product that holds alcohol count as what burns', () => {
    const name = nameOf('chlorhexidine in alcohol');
    assert.equal(preparations.find(name)?.flammable, true);
    assert.equal(allergens.find(name)?.name, 'chlorhexidine');
  });
});
