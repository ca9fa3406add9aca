import assert from 'node:assert/strict';
import { PhraseTable } from '../../src/note/words/phrases.ts';
import { WordTable } from '../../src/note/words/word-table.ts';
import { allergens, reactions } from '../../src/reference/allergens.ts';
import { closures } from '../../src/reference/closures.ts';
import { bloodThinners } from '../../src/reference/blood-thinners.ts';
import { cautions } from '../../src/reference/cautions.ts';
import { otherConditions } from '../../src/reference/conditions.ts';
import { instruments } from '../../src/reference/instruments.ts';
import { otherMedicines } from '../../src/reference/medicines.ts';
import { techniques } from '../../src/reference/techniques.ts';
import { consents } from '../../src/reference/consents.ts';
import { depths } from '../../src/reference/depths.ts';
import { diagnoses } from '../../src/reference/diagnoses.ts';
import { dressings } from '../../src/reference/dressings.ts';
import { events } from '../../src/reference/events.ts';
import { hemostasis } from '../../src/reference/hemostasis.ts';
import { implants } from '../../src/reference/implants.ts';
import { laboratoryTests } from '../../src/reference/laboratory-tests.ts';
import { layers } from '../../src/reference/layers.ts';
import { materials } from '../../src/reference/materials.ts';
import { media } from '../../src/reference/media.ts';
import { methods } from '../../src/reference/methods.ts';
import { preparations } from '../../src/reference/preparations.ts';
import { relations } from '../../src/reference/relations.ts';
import { citation } from '../../src/reference/sources/index.ts';
import type { WordRow } from '../../src/reference/types.ts';

const tables: Readonly<Record<string, readonly WordRow[]>> = {
  allergens,
  bloodThinners,
  cautions,
  closures,
  consents,
  depths,
  diagnoses,
  dressings,
  events,
  hemostasis,
  implants,
  instruments,
  laboratoryTests,
  layers,
  materials,
  media,
  methods,
  otherConditions,
  otherMedicines,
  preparations,
  reactions,
  relations,
  techniques,
};

/** Words of the trade that a note may use, and the row that each belongs to. */
const spoken: readonly (readonly [table: string, word: string, row: string])[] = [
  ['methods', 'saucerization', 'deep shave'],
  ['methods', 'saucerisation', 'deep shave'],
  ['methods', 'tangential', 'shave'],
  ['methods', 'snip', 'scissor'],
  ['methods', 'ellipse', 'excisional'],
  ['methods', 'Shave removal', 'shave'],
  ['methods', 'ED&C', 'electrodesiccation and curettage'],
  ['depths', 'mid-dermis', 'mid dermis'],
  ['depths', 'subcutaneous fat', 'subcutis'],
  ['hemostasis', 'aluminium chloride', 'aluminum chloride'],
  ['hemostasis', 'ferric subsulphate', 'ferric subsulfate'],
  ['hemostasis', 'battery cautery', 'heat cautery'],
  ['hemostasis', 'hot wire', 'heat cautery'],
  ['hemostasis', 'bipolar', 'bipolar electrosurgery'],
  ['hemostasis', 'electrodesiccation', 'cautery'],
  ['hemostasis', 'electrocautery', 'cautery'],
  ['hemostasis', 'diathermy', 'electrosurgery'],
  ['preparations', 'alcohol', 'isopropyl alcohol'],
  ['preparations', 'povidone iodine', 'povidone-iodine'],
  ['dressings', 'petroleum jelly', 'petrolatum'],
  ['dressings', 'white soft paraffin', 'petrolatum'],
  ['dressings', 'sticking plaster', 'adhesive bandage'],
  ['closures', 'secondary intention', 'second intention'],
  ['closures', 'skin glue', 'tissue glue'],
  ['materials', 'polyglactin 910', 'polyglactin'],
  ['materials', 'chromic catgut', 'chromic gut'],
  ['media', "Michel's", 'Michel'],
  ['media', 'immunofluorescence transport medium', 'immunofluorescence transport'],
  ['media', '10% neutral buffered formalin', 'formalin'],
  ['laboratoryTests', 'H&E', 'routine histology'],
  ['laboratoryTests', 'DIF', 'direct immunofluorescence'],
  ['laboratoryTests', 'AFB culture', 'mycobacterial culture'],
  ['implants', 'AICD', 'ICD'],
  ['implants', 'DBS', 'deep brain stimulator'],
  ['implants', 'hip replacement', 'metal implant'],
  ['allergens', 'NKDA', 'none'],
  ['allergens', 'adrenaline', 'epinephrine'],
  ['allergens', 'metabisulphite', 'sulfite'],
  ['allergens', 'sulfa', 'sulfonamide'],
  ['events', 'haematoma', 'hematoma'],
  ['relations', 'perilesional', 'perilesional'],
  ['consents', 'oral', 'verbal'],
  ['layers', 'buried', 'deep'],
];

describe('tables of words', () => {
  for (const [name, rows] of Object.entries(tables)) {
    it(`${name}: no word stands for two rows, and free text finds each`, () => {
      const words = new WordTable(rows);
      const phrases = new PhraseTable(rows);
      for (const row of rows)
        for (const word of [row.name, ...row.synonyms]) {
          assert.equal(words.find(word), row);
          assert.deepEqual(
            phrases.mentionsIn(word).map((mention) => mention.row.name),
            [row.name],
            `"${word}" in free text`,
          );
        }
    });
  }

  for (const [table, word, row] of spoken)
    it(`${table}: ${word} is ${row}`, () => {
      assert.equal(new WordTable(tables[table] ?? []).find(word)?.name, row);
    });

  it('knows no row by the name of a property of objects', () => {
    for (const rows of Object.values(tables)) {
      const words = new WordTable(rows);
      for (const word of ['constructor', '__proto__', 'toString', ''])
        assert.equal(words.find(word), undefined);
    }
  });
});

describe('what products contain', () => {
  const known = new Set(allergens.map(({ name }) => name));
  const products = [
    ...closures,
    ...dressings,
    ...hemostasis,
    ...materials,
    ...preparations,
  ] as readonly (WordRow & {
    readonly contains?: readonly string[];
    readonly mayContain?: readonly string[];
  })[];

  it('is in the table of allergens', () => {
    for (const { name, contains = [], mayContain = [] } of products)
      for (const one of [...contains, ...mayContain]) assert.ok(known.has(one), `${one} in ${name}`);
  });

  it('crosses only with what is in the table', () => {
    for (const { name, covers = [], crosses = [] } of allergens)
      for (const one of [...covers, ...crosses.map(({ to }) => to)])
        assert.ok(known.has(one), `${one} of ${name}`);
  });
});

describe('media', () => {
  it('say of every test whether they serve it', () => {
    const judged = laboratoryTests.filter(({ like, tissue }) => like === undefined && tissue !== false);
    for (const { name, effects = {} } of media)
      assert.deepEqual(Object.keys(effects).sort(), judged.map((test) => test.name).sort(), name);
  });

  it('do to a stain what they do to the test that it is like', () => {
    const known = new Set(Object.keys(media[0]?.effects ?? {}));
    for (const { name, like } of laboratoryTests) assert.ok(like === undefined || known.has(like), name);
  });

  it('that fix destroy what needs living or unaltered tissue', () => {
    for (const { fixes, effects } of media)
      for (const test of ['direct immunofluorescence', 'bacterial culture', 'frozen section'])
        assert.equal(effects?.[test]?.on === 'destroys', fixes, test);
  });
});

describe('sources of words', () => {
  it('stand in the table of sources', () => {
    const sourced = [
      ...implants,
      ...allergens.flatMap(({ crosses = [] }) => crosses),
      ...media.flatMap(({ effects = {}, keeps }) => [...Object.values(effects), ...(keeps ? [keeps] : [])]),
    ];
    for (const { source } of sourced) assert.notEqual(citation(source), '');
  });
});

describe('odd depths of methods', () => {
  it('are depths', () => {
    const words = new WordTable(depths);
    for (const { name, odd = {} } of methods)
      for (const depth of Object.keys(odd)) assert.equal(words.find(depth)?.name, depth, name);
  });
});
