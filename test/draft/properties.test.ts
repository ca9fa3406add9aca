import assert from 'node:assert/strict';
import fc from 'fast-check';
import { draft } from '../../src/draft/draft.ts';
import { readNote } from '../../src/note/read.ts';
import { referenceTables as tables } from '../../src/practice/tables.ts';
import { times } from '../share.ts';
import { unaccounted } from './lost.ts';

/** Statements of which each says other keys, so that any of them may be together. */
const statements = [
  'Written consent was obtained.',
  'The patient is a 64-year-old woman.',
  'Allergic to latex.',
  'She takes warfarin.',
  'Weight 62 kg.',
  'The area was prepped with chlorhexidine.',
  'Anesthetized with 1.5 mL of 1% lidocaine with epinephrine 1:100,000.',
  'Shave biopsy of the left cheek.',
  'It went to the mid dermis.',
  'Hemostasis with aluminum chloride.',
  'Placed in formalin.',
  'Dressed with petrolatum and gauze.',
  'No complications.',
  'Rule out basal cell carcinoma.',
  'Time-out was performed.',
];

/** Statements that say nothing of this visit's procedures. */
const others = [
  'No electrocautery was used.',
  'A punch biopsy of the right arm is planned for next week.',
  'Her mother was allergic to lidocaine.',
  'If it bleeds, silver nitrate will be applied.',
  'She had an excision of the left calf in 2019.',
  'Consider a shave of the nose at the next visit.',
  'Last year a 4 mm punch was closed with 4-0 nylon.',
  'We discussed cryotherapy and curettage.',
  'Culture was not needed.',
];

/** Values by the last key of their path, so that the number of a procedure does not count. */
const valuesOf = (text: string): ReadonlySet<string> =>
  new Set(draft(text, tables).facts.map(({ path, value }) => `${String(path.at(-1))}: ${value}`));

const spoken = fc.shuffledSubarray(statements, { minLength: 1 });

describe('drafts of any text', () => {
  it('say of each word of a text what became of it, and write a note that can be read', () => {
    const words = fc.constantFrom(
      ...'left right cheek punch shave 4 mm 1% mL lidocaine 1:100,000 epinephrine no , . ; : ( ) ? not nylon 4-0 two and with A formalin allergic to correction both each Dr Smith patient \n - " # \' [ { ?? : % & *'.split(
        ' ',
      ),
    );
    const text = fc.oneof(
      fc.string(),
      fc.array(words, { maxLength: 40 }).map((some) => some.join(' ')),
    );
    fc.assert(
      fc.property(text, (any) => {
        const made = draft(any, tables);
        assert.deepEqual(unaccounted(any, made), []);
        const { value, problems } = readNote(made.note);
        assert.ok(value !== null);
        assert.deepEqual(
          problems.filter(({ code }) => code.startsWith('yaml/')),
          [],
        );
      }),
      { numRuns: times(400) },
    );
  });

  it('rest on words of the text, and are where the note has them', () => {
    fc.assert(
      fc.property(spoken, (some) => {
        const text = some.join(' ');
        const { facts, note, places } = draft(text, tables);
        for (const { from, to } of facts) assert.ok(text.slice(from, to).trim() !== '');
        for (const { path, at } of places) {
          const fact = facts.find(
            (one) => one.path.join('.') === path.join('.') && note.slice(at.from, at.to).includes(one.value),
          );
          assert.ok(fact !== undefined, `${path.join('.')} in ${note}`);
        }
        assert.equal(places.length, facts.length);
      }),
      { numRuns: times(200) },
    );
  });

  it('do not depend on the order of statements', () => {
    fc.assert(
      fc.property(spoken, (some) => {
        assert.deepEqual(valuesOf([...some].sort().join(' ')), valuesOf(some.join(' ')));
      }),
      { numRuns: times(200) },
    );
  });

  it('say nothing more when a statement is taken out', () => {
    fc.assert(
      fc.property(spoken, fc.nat(), (some, nth) => {
        const all = valuesOf(some.join(' '));
        const less = valuesOf(some.filter((_, at) => at !== nth % some.length).join(' '));
        assert.deepEqual(
          [...less].filter((value) => !all.has(value)),
          [],
        );
      }),
      { numRuns: times(200) },
    );
  });

  it('take nothing of what is denied, planned, past, supposed or of another person', () => {
    for (const text of others) {
      const facts = draft(text, tables).facts.filter(
        ({ path }) => path[0] === 'procedures' || path[0] === 'patient',
      );
      assert.deepEqual(facts, [], text);
    }
    fc.assert(
      fc.property(spoken, fc.subarray(others), (some, rest) => {
        assert.deepEqual(valuesOf([...some, ...rest].join(' ')), valuesOf(some.join(' ')));
      }),
      { numRuns: times(200) },
    );
  });

  it('are the same wherever a line breaks, and in capitals', () => {
    fc.assert(
      fc.property(spoken, fc.array(fc.nat(), { maxLength: 6 }), (some, breaks) => {
        const words = some.join(' ').split(' ');
        const broken = words
          .map((word, at) => word + (breaks.some((one) => one % words.length === at) ? '\n' : ' '))
          .join('');
        assert.deepEqual(valuesOf(broken), valuesOf(some.join(' ')));
        const lower = (values: ReadonlySet<string>): string[] =>
          [...values].map((value) => value.toLowerCase()).sort();
        assert.deepEqual(lower(valuesOf(some.join(' ').toUpperCase())), lower(valuesOf(some.join(' '))));
      }),
      { numRuns: times(200) },
    );
  });
});
