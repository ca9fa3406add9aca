import assert from 'node:assert/strict';
import fc from 'fast-check';
import { noteIndex, readNote, readPractice } from '../../src/note/read.ts';
import { tablesOf } from '../../src/practice/tables.ts';
import { times } from '../share.ts';
import { flags, judge, silent } from './tester.ts';

const letters = 'a b c d e f g h i j k l m n o p q r s t u v w x y z -';

interface Slip {
  readonly how: 'insert' | 'leave out' | 'change' | 'swap';
  readonly at: number;
  readonly letter: string;
}

const slips: fc.Arbitrary<Slip> = fc.record({
  how: fc.constantFrom('insert', 'leave out', 'change', 'swap'),
  at: fc.nat({ max: 30 }),
  letter: fc.constantFrom(...letters.split(' ')),
});

/** A word with one slip of the hand. */
function slipped(word: string, { how, at, letter }: Slip): string {
  const place = at % word.length;
  const [head, rest] = [word.slice(0, place), word.slice(place)];
  if (how === 'insert') return head + letter + rest;
  if (how === 'leave out') return head + rest.slice(1);
  if (how === 'change') return head + letter + rest.slice(1);
  return head + (rest[1] ?? '') + (rest[0] ?? '') + rest.slice(2);
}

/** A slip can make a dash of a list, or nothing, of a key; those are other faults. */
const isKey = (word: string): boolean => /^[a-z][a-z-]*[a-z]$|^[a-z]$/.test(word);

describe('a slip in a key', () => {
  it('is read as meant and reported, or both keys that are as near are named', () => {
    const keys = [...noteIndex].flatMap(([map, { shape }]) => shape.keys.map(({ key }) => ({ map, key })));
    const of = noteIndex.get('procedure')!;
    fc.assert(
      fc.property(
        fc.constantFrom(...keys.filter(({ map }) => map === 'procedure')),
        slips,
        ({ key }, slip) => {
          const typed = slipped(key, slip);
          fc.pre(isKey(typed) && !of.byName.has(typed));
          const { respelled, unread } = readNote(`procedures:\n  - ${typed}: x\n`);
          const meant = [...respelled.values()].map((one) => one.key);
          const { findings } = judge(`procedures:\n  - ${typed}: x\n`);
          const said = findings.find(({ code }) => code === 'shape/unknown-key');
          assert.equal(said?.severity, 'error', typed);
          if (unread.length === 0) assert.deepEqual(meant, [key], typed);
          else assert.ok(said.form === 'either' && 'rival' in said.args, `${typed}: ${said.form}`);
        },
      ),
      { numRuns: times(2000) },
    );
  });

  it('hides no dose', () => {
    const note = (key: string): string =>
      `visit: 2026-03-02\npatient: {age: 40 years, weight: 60 kg}\n${key}: {agent: lidocaine, concentration: 1%, volume: 60 mL}\n`;
    assert.ok(judge(note('anesthetic')).findings.some(({ code }) => code === 'dose/over-limit'));
    fc.assert(
      fc.property(slips, (slip) => {
        const typed = slipped('anesthetic', slip);
        fc.pre(isKey(typed));
        const codes = judge(note(typed))
          .findings.filter(({ severity }) => severity === 'error')
          .map(({ code }) => code);
        assert.ok(codes.includes('dose/over-limit'), `${typed}: ${codes.join()}`);
      }),
      { numRuns: times(400) },
    );
  });
});

describe('an unknown key', () => {
  it('under which a dose, an allergy or an implant may be written leaves the dose unjudged, and says so', () => {
    for (const note of [
      'procedures:\n  - ⟦freezing⟧: {agent: lidocaine, concentration: 1%, volume: 60 mL}\n',
      'procedures:\n  - ⟦given⟧: 3 mL of the usual\n',
      'patient: {⟦sensitive-to⟧: penicillin and lidocaine}\n',
      'patient: {⟦box⟧: pacemaker}\n',
      'patient: {⟦gadgets⟧: [{what: pacemaker}]}\n',
    ]) {
      flags('dose/cannot-judge', note, { severity: 'error' });
      const { dose } = judge(note.replace(/[⟦⟧]/g, ''));
      assert.equal(dose?.judged, false, note);
    }
  });

  it('does so for misspelt words, in any part of a note, whatever a practice says of unknown keys', () => {
    const practice = readPractice(
      'wheal: 1\nseverities: {shape/unknown-key: off, dose/cannot-judge: off}\n',
    ).value;
    const tables = tablesOf(practice);
    for (const note of [
      'patient: {gadgets: pacemkaer}\n',
      'patient: {sensitive-to: lidocane}\n',
      'procedures:\n  - freezing: lidocane, lots of it\n',
      'procedures:\n  - specimen: {label: A, freezing: 3 mL lidocaine}\n',
      'events:\n  - {on: 2026-03-03, kind: bleeding, gadgets: pacemaker}\n',
    ]) {
      const { dose, findings } = judge(note, { tables });
      assert.equal(dose?.judged, false, note);
      assert.ok(
        findings.some(({ code, severity }) => code === 'dose/cannot-judge' && severity === 'error'),
        note,
      );
    }
  });

  it('of anything else is an unknown key and nothing more', () => {
    silent('dose/cannot-judge', 'procedures:\n  - weather: fine\n');
    silent('dose/cannot-judge', 'patient: {box: no pacemaker}\n');
    silent('dose/cannot-judge', 'procedures:\n  - siet: left cheek\n');
  });
});

/** Notes with a danger that goes by a word, and the error that it is. */
const dangers: readonly (readonly [code: string, word: string, note: (word: string) => string])[] = [
  ...['electrosurgery', 'electrodesiccation', 'fulguration'].map(
    (word) =>
      [
        'device/electrosurgery',
        word,
        (typed: string) =>
          `patient: {implants: [pacemaker]}\nprocedures:\n  - site: left chest\n    hemostasis: ${typed}\n`,
      ] as const,
  ),
  ...['pacemaker', 'defibrillator', 'deep brain stimulator'].map(
    (word) =>
      [
        'device/electrosurgery',
        word,
        (typed: string) =>
          `patient: {implants: ${typed}}\nprocedures:\n  - site: left chest\n    hemostasis: electrosurgery\n`,
      ] as const,
  ),
  ...['formalin', 'paraffin']
    .slice(0, 1)
    .map(
      (word) =>
        [
          'specimen/wrong-medium',
          word,
          (typed: string) =>
            `procedures:\n  - specimen: {medium: ${typed}, tests: [direct immunofluorescence]}\n`,
        ] as const,
    ),
  [
    'specimen/wrong-medium',
    'direct immunofluorescence',
    (typed) => `procedures:\n  - specimen: {medium: formalin, tests: [${typed}]}\n`,
  ],
  [
    'allergy/agent',
    'lidocaine',
    (typed) =>
      `patient: {allergies: [${typed}]}\nanesthetic: {agent: lidocaine, concentration: 1%, volume: 2 mL}\n`,
  ],
  [
    'allergy/agent',
    'lidocaine',
    (typed) =>
      `patient: {allergies: ["${typed} - hives"]}\nanesthetic: {agent: lidocaine, concentration: 1%, volume: 2 mL}\n`,
  ],
  [
    'allergy/dressing',
    'bacitracin',
    (typed) => `patient: {allergies: [${typed}]}\nprocedures:\n  - dressing: bacitracin\n`,
  ],
];

describe('a slip in the word of a danger', () => {
  for (const [code, word, note] of dangers)
    it(`keeps ${code}: ${note(word).replace(/\s+/g, ' ')}`, () => {
      assert.ok(
        judge(note(word)).findings.some((one) => one.code === code && one.severity === 'error'),
        word,
      );
      // The first letter too; what becomes a word of its own, or another of the table, is no slip.
      let kept = 0;
      let tried = 0;
      fc.assert(
        fc.property(slips, (slip) => {
          const typed = slipped(word, slip);
          fc.pre(typed !== word && /^[a-z][a-z -]*[a-z]$/.test(typed));
          const { findings } = judge(note(typed));
          const at = note(typed).indexOf(typed);
          tried += 1;
          if (findings.some((one) => one.code === code && one.severity === 'error')) kept += 1;
          else
            assert.ok(
              findings.some(
                ({ severity, start, end }) =>
                  severity !== 'information' && start <= at + typed.length && end >= at,
              ),
              `${typed} is silent`,
            );
        }),
        { numRuns: Math.max(25, times(150)) },
      );
      // Of few that are tried by chance, fewer may be the easy ones.
      assert.ok(kept / tried > (tried < 100 ? 0.6 : 0.8), `only ${kept} of ${tried} kept the error`);
    });
});
