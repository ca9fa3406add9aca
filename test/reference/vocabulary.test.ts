import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import type { WordTable } from '../../src/note/words/word-table.ts';
import { referenceTables } from '../../src/practice/tables.ts';
import type { WordRow } from '../../src/reference/types.ts';

const folder = 'test/reference/vocabulary';
const { cautions, lengthening, followUp, otherConditions, otherMedicines, bloodThinners } = referenceTables;

/** The tables that may know what a key of the note says. */
const tables: Readonly<Record<string, readonly WordTable<WordRow>[]>> = {
  agent: [referenceTables.agents],
  allergen: [referenceTables.allergens, referenceTables.agents],
  closure: [referenceTables.closures],
  condition: [cautions, referenceTables.cardiacConditions, lengthening, followUp.scarRisks, otherConditions],
  consent: [referenceTables.consents],
  depth: [referenceTables.depths],
  dressing: [referenceTables.dressings],
  event: [referenceTables.events],
  hemostasis: [referenceTables.hemostasis],
  implant: [referenceTables.implants],
  instrument: [referenceTables.instruments],
  material: [referenceTables.materials],
  medicine: [bloodThinners, cautions, lengthening, otherMedicines],
  medium: [referenceTables.media],
  method: [referenceTables.methods],
  preparation: [referenceTables.preparations],
  relation: [referenceTables.relations],
  technique: [referenceTables.techniques],
  test: [referenceTables.tests],
};

interface Word {
  readonly key: string;
  readonly word: string;
  readonly row: string;
}

const wordsIn = (file: string): readonly Word[] =>
  readFileSync(`${folder}/${file}`, 'utf8')
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => {
      const [key = '', word = '', row = '', found = '', ...more] = line.split(',');
      assert.ok(found !== '' && more.length === 0, `four fields: ${line}`);
      return { key, word, row };
    });

const isUnderstood = ({ key, word, row }: Word): boolean =>
  (tables[key] ?? []).some((table) => table.find(word)?.name === row);

const leastShare = 0.95;

/** Words as texts of the trade have them, collected before anybody looked whether the tables know them. */
describe('vocabulary collected from texts of the trade', () => {
  for (const file of readdirSync(folder))
    it(`${file}: at least 95 of 100 words are understood, word for word`, () => {
      const words = wordsIn(file);
      assert.ok(words.length >= 100, 'a hundred words or more');
      for (const { key } of words) assert.ok(key in tables, key);
      const not = words.filter((one) => !isUnderstood(one));
      const share = 1 - not.length / words.length;
      assert.ok(
        share >= leastShare,
        `${(100 * share).toFixed(1)}%, not: ${not.map(({ key, word }) => `${key} ${word}`).join('; ')}`,
      );
    });
});
