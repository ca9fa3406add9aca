import assert from 'node:assert/strict';
import fc from 'fast-check';
import { PhraseTable, phrasesOf, type Standing } from '../../../src/note/words/phrases.ts';
import { WordTable } from '../../../src/note/words/word-table.ts';

const rows = [
  { name: 'melanoma', synonyms: ['MM'] },
  { name: 'squamous cell carcinoma', synonyms: ['SCC'] },
  { name: 'basal cell carcinoma', synonyms: ['BCC'] },
  { name: 'nevus', synonyms: ['naevus', 'mole'] },
  { name: 'latex', synonyms: ['natural rubber'] },
  { name: 'lidocaine', synonyms: ['lignocaine'] },
  { name: 'adhesive tape', synonyms: ['tape'] },
  { name: 'sulfite', synonyms: ['metabisulfite', 'sulphite'] },
  { name: 'H&E', synonyms: [] },
];
const table = new PhraseTable(rows);
const read = (text: string): string[] =>
  table.mentionsIn(text).map(({ row, standing }) => `${row.name} ${standing}`);

/** Free texts as they are dictated, and how each is to what it mentions. */
const phrases: readonly (readonly [string, ...(readonly [string, Standing])[]])[] = [
  ['melanoma', ['melanoma', 'asserted']],
  ['Melanoma.', ['melanoma', 'asserted']],
  ['rule out melanoma', ['melanoma', 'asked']],
  ['r/o melanoma', ['melanoma', 'asked']],
  ['R/O MM', ['melanoma', 'asked']],
  ['melanoma?', ['melanoma', 'asked']],
  ['?melanoma', ['melanoma', 'asked']],
  ['? melanoma', ['melanoma', 'asked']],
  ['concern for melanoma', ['melanoma', 'asked']],
  ['suspicious for SCC', ['squamous cell carcinoma', 'asked']],
  ['possible BCC', ['basal cell carcinoma', 'asked']],
  ['melanoma suspected', ['melanoma', 'asked']],
  ['cannot rule out melanoma', ['melanoma', 'asked']],
  ['melanoma cannot be excluded', ['melanoma', 'asked']],
  ['melanoma not ruled out', ['melanoma', 'asked']],
  ['nevus vs melanoma', ['nevus', 'asked'], ['melanoma', 'asked']],
  ['nevus versus melanoma', ['nevus', 'asked'], ['melanoma', 'asked']],
  ['no concern for melanoma', ['melanoma', 'denied']],
  ['low suspicion of melanoma', ['melanoma', 'denied']],
  ['nevus, low concern for melanoma', ['nevus', 'asserted'], ['melanoma', 'denied']],
  ['not low suspicion, melanoma', ['melanoma', 'asserted']],
  ['no melanoma', ['melanoma', 'denied']],
  ['not melanoma', ['melanoma', 'denied']],
  ['not suspicious for melanoma', ['melanoma', 'denied']],
  ['denies latex', ['latex', 'denied']],
  ['denies latex, tape', ['latex', 'denied'], ['adhesive tape', 'denied']],
  ['without signs of melanoma', ['melanoma', 'denied']],
  ['no evidence of SCC or BCC', ['squamous cell carcinoma', 'denied'], ['basal cell carcinoma', 'denied']],
  [
    'no melanoma, SCC or BCC',
    ['melanoma', 'denied'],
    ['squamous cell carcinoma', 'denied'],
    ['basal cell carcinoma', 'denied'],
  ],
  ['melanoma ruled out', ['melanoma', 'denied']],
  ['melanoma unlikely', ['melanoma', 'unlikely']],
  ['BCC, melanoma unlikely', ['basal cell carcinoma', 'asserted'], ['melanoma', 'unlikely']],
  ['low concern, melanoma less likely', ['melanoma', 'unlikely']],
  ['history of melanoma', ['melanoma', 'past']],
  ['h/o melanoma, new BCC', ['melanoma', 'past'], ['basal cell carcinoma', 'asserted']],
  ['family history of melanoma', ['melanoma', 'past']],
  ['no history of melanoma', ['melanoma', 'denied']],
  ['s/p excision of melanoma', ['melanoma', 'past']],
  ['prior SCC; rule out BCC', ['squamous cell carcinoma', 'past'], ['basal cell carcinoma', 'asked']],
  ['favor benign nevus', ['nevus', 'asserted']],
  ['melanoma vs nevus, favor nevus', ['melanoma', 'unlikely'], ['nevus', 'asked'], ['nevus', 'asserted']],
  ['r/o melanoma, favor benign', ['melanoma', 'unlikely']],
  ['favour benign, rule out melanoma', ['melanoma', 'unlikely']],
  ['favor melanoma', ['melanoma', 'asserted']],
  ['melanoma favored', ['melanoma', 'asserted']],
  ['melanoma is favored over nevus', ['melanoma', 'asserted'], ['nevus', 'unlikely']],
  ['favor melanoma over nevus', ['melanoma', 'asserted'], ['nevus', 'unlikely']],
  ['melanoma, most likely', ['melanoma', 'asserted']],
  ['favor seborrheic keratosis over melanoma', ['melanoma', 'unlikely']],
  ['seborrheic keratosis favored over melanoma', ['melanoma', 'unlikely']],
  ['seborrheic keratosis, favored over melanoma', ['melanoma', 'unlikely']],
  ['favor atypical nevus over melanoma', ['nevus', 'asserted'], ['melanoma', 'asserted']],
  ['favor dysplastic nevus, r/o melanoma', ['nevus', 'asserted'], ['melanoma', 'asked']],
  ['seborrheic keratosis rather than melanoma', ['melanoma', 'denied']],
  ['seborrheic keratosis, less likely melanoma', ['melanoma', 'unlikely']],
  ['seborrheic keratosis, much less likely melanoma', ['melanoma', 'unlikely']],
  ['melanoma, less likely seborrheic keratosis', ['melanoma', 'asserted']],
  ['melanoma, less likely nevus', ['melanoma', 'asserted'], ['nevus', 'unlikely']],
  ['melanoma, less likely', ['melanoma', 'unlikely']],
  ['melanoma less likely than nevus', ['melanoma', 'unlikely'], ['nevus', 'asserted']],
  ['nevus vs less likely melanoma', ['nevus', 'asked'], ['melanoma', 'unlikely']],
  ['seborrheic keratosis more likely than melanoma', ['melanoma', 'unlikely']],
  ['seborrheic keratosis > melanoma', ['melanoma', 'unlikely']],
  ['seborrheic keratosis >> melanoma', ['melanoma', 'unlikely']],
  ['melanoma>nevus', ['melanoma', 'asserted'], ['nevus', 'unlikely']],
  ['diameter > 6 cm, melanoma', ['melanoma', 'asserted']],
  ['papule >6 cm melanoma', ['melanoma', 'asserted']],
  ['melanoma not favored', ['melanoma', 'unlikely']],
  ['nevus vs melanoma (less likely)', ['nevus', 'asked'], ['melanoma', 'unlikely']],
  ['nevus vs melanoma (favored)', ['nevus', 'unlikely'], ['melanoma', 'asked']],
  ['unlikely melanoma', ['melanoma', 'unlikely']],
  ['unlikely to represent melanoma', ['melanoma', 'unlikely']],
  ['not likely melanoma', ['melanoma', 'unlikely']],
  ['low index of suspicion for melanoma', ['melanoma', 'unlikely']],
  ['low likelihood of melanoma', ['melanoma', 'unlikely']],
  ['melanoma low on the differential', ['melanoma', 'unlikely']],
  ['melanoma must be excluded', ['melanoma', 'asked']],
  ['melanoma cannot be entirely excluded', ['melanoma', 'asked']],
  ['melanoma could not be ruled out', ['melanoma', 'asked']],
  ['melanoma has not been excluded', ['melanoma', 'asked']],
  ['melanoma not yet ruled out', ['melanoma', 'asked']],
  ['melanoma has been excluded', ['melanoma', 'denied']],
  ['r/o melanoma, favor malignant', ['melanoma', 'asked']],
  ['no pain but melanoma', ['melanoma', 'asserted']],
  ['no itch. Melanoma', ['melanoma', 'asserted']],
  ['no itch, melanoma on the back', ['melanoma', 'asserted']],
  ['not a mole; latex causes hives', ['nevus', 'denied'], ['latex', 'asserted']],
  ['melanomatous'],
  ['sulfa'],
  ['sulfites', ['sulfite', 'asserted']],
  ['sodium metabisulfite', ['sulfite', 'asserted']],
  ['natural  rubber gloves', ['latex', 'asserted']],
  ['natural-rubber', ['latex', 'asserted']],
  ['adhesive\ntape', ['adhesive tape', 'asserted']],
  ['tapes', ['adhesive tape', 'asserted']],
  ['does not tolerate lidocaine', ['lidocaine', 'asserted']],
  ['lignocaine (lidocaine)', ['lidocaine', 'asserted'], ['lidocaine', 'asserted']],
  ['SCC/BCC', ['squamous cell carcinoma', 'asserted'], ['basal cell carcinoma', 'asserted']],
  ['for H&E', ['H&E', 'asserted']],
  ['constructor __proto__ toString'],
  [''],
];

describe('mentions in free text', () => {
  for (const [text, ...expected] of phrases)
    it(`reads ${JSON.stringify(text)}`, () => {
      const want = expected.map(([name, standing]) => `${name} ${standing}`);
      const got = read(text);
      assert.deepEqual(got, want);
    });

  it('says where the words stand', () => {
    const text = 'rash from adhesive  tape';
    const [mention] = table.mentionsIn(text);
    assert.equal(text.slice(mention?.from, mention?.to), 'adhesive  tape');
  });

  it('takes a word of denial for an answer only where nothing follows', () => {
    const answers = new PhraseTable([{ name: 'none', synonyms: ['no', 'denies'] }, ...rows]);
    const standings = (text: string): string[] =>
      answers.mentionsIn(text).map(({ row, standing }) => `${row.name} ${standing}`);
    assert.deepEqual(standings('no'), ['none asserted']);
    assert.deepEqual(standings('no latex'), ['latex denied']);
    assert.deepEqual(standings('denies latex, tape'), ['latex denied', 'adhesive tape denied']);
  });

  it('lists what is asserted only', () => {
    assert.deepEqual(table.assertedIn('no latex, lidocaine, history of melanoma'), [rows[5]]);
  });

  it('builds the phrases of a table once', () => {
    const words = new WordTable(rows);
    assert.equal(phrasesOf(words), phrasesOf(words));
  });

  it('takes any text, and answers ranges in order that hold the words', () => {
    const word = fc.constantFrom(
      'no',
      'melanoma',
      ',',
      'or',
      'history',
      'of',
      '?',
      '.',
      'favor',
      'but',
      '\n',
      'vs',
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.array(word, { maxLength: 40 }).map((all) => all.join(' ')),
        ),
        (text) => {
          let last = 0;
          for (const { row, from, to } of table.mentionsIn(text)) {
            assert.ok(last <= from && from < to && to <= text.length);
            assert.ok(
              [row.name, ...row.synonyms].some((one) =>
                text.slice(from, to).toLowerCase().startsWith(one.slice(0, 2).toLowerCase()),
              ),
            );
            last = to;
          }
        },
      ),
    );
  });

  it('reads an answer behind a colon', () => {
    const standings = (text: string): readonly string[] =>
      table.mentionsIn(text).map(({ standing }) => standing);
    for (const text of ['latex: no', 'latex: none.', 'Latex: denies', 'tape, latex: negative'])
      assert.deepEqual(standings(text).at(-1), 'denied', text);
    for (const text of ['latex: yes', 'latex: no longer sure', 'latex: rash', 'latex:'])
      assert.deepEqual(standings(text), ['asserted'], text);
    assert.deepEqual(standings('latex: no, tape: yes'), ['denied', 'asserted']);
  });

  it('reads a word in a denied list the same wherever it stands', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(['latex', 'melanoma', 'SCC', 'tape'], { minLength: 2 }), (words) => {
        const text = `denies ${words.join(', ')}`;
        assert.ok(table.mentionsIn(text).every(({ standing }) => standing === 'denied'));
      }),
    );
  });
});
