import assert from 'node:assert/strict';
import { wordsRead } from '../../src/note/words/word-table.ts';
import { referenceTables as tables } from '../../src/practice/tables.ts';
import type { WordRow } from '../../src/reference/types.ts';
import { step } from '../share.ts';
import { judge, judgeBy } from './tester.ts';

const letters = 'abcdefghijklmnopqrstuvwxyz';
const isLetter = (one: string | undefined): boolean => one !== undefined && /[a-z]/i.test(one);

/** A word with one letter left out, doubled, swapped with the next, changed or put in, at each place. */
function* slipsOf(word: string): Generator<string> {
  for (let at = 0; at < word.length; at++) {
    if (!isLetter(word[at])) continue;
    const [head, rest] = [word.slice(0, at), word.slice(at + 1)];
    const other = letters[(at * 7 + word.length) % 26]!;
    const swapped = isLetter(rest[0]) ? `${head}${rest[0]}${word[at]}${rest.slice(1)}` : word;
    const all = [head + rest, `${head}${word[at]}${word.slice(at)}`, swapped, head + other + rest];
    for (const typed of [...all, head + other + word.slice(at)])
      if (typed.toLowerCase() !== word.toLowerCase()) yield typed;
  }
}

interface Danger {
  readonly what: string;
  readonly code: string;
  readonly rows: readonly WordRow[];
  readonly note: (quoted: string) => string;
}

const lidocaine = 'anesthetic: {agent: lidocaine, concentration: 1%, volume: 2 mL}\n';

/** Where a word of a table makes a danger. */
const dangers: readonly Danger[] = [
  {
    what: 'hemostasis',
    code: 'device/electrosurgery',
    rows: tables.hemostasis.rows,
    note: (word) =>
      `patient: {implants: [pacemaker]}\nprocedures:\n  - site: left chest\n    hemostasis: ${word}\n`,
  },
  {
    what: 'implants',
    code: 'device/electrosurgery',
    rows: tables.implants.rows,
    note: (word) =>
      `patient: {implants: ${word}}\nprocedures:\n  - site: left chest\n    hemostasis: electrosurgery\n`,
  },
  {
    what: 'a medium',
    code: 'specimen/wrong-medium',
    rows: tables.media.rows,
    note: (word) => `procedures:\n  - specimen: {medium: ${word}, tests: [direct immunofluorescence]}\n`,
  },
  {
    what: 'tests',
    code: 'specimen/wrong-medium',
    rows: tables.tests.rows,
    note: (word) => `procedures:\n  - specimen: {medium: formalin, tests: [${word}]}\n`,
  },
  {
    what: 'an allergy to an anesthetic',
    code: 'allergy/agent',
    rows: tables.agents.rows,
    note: (word) => `patient: {allergies: [${word}]}\n${lidocaine}`,
  },
  {
    what: 'an allergy to what is put on',
    code: 'allergy/dressing',
    rows: tables.allergens.rows,
    note: (word) =>
      `patient: {allergies: [${word}]}\nprocedures:\n  - dressing: [bacitracin, adhesive bandage, silver sulfadiazine, petrolatum]\n`,
  },
  {
    what: 'a preparation',
    code: 'allergy/preparation',
    rows: tables.preparations.rows,
    note: (word) =>
      `patient: {allergies: [chlorhexidine, povidone-iodine, isopropyl alcohol]}\nprocedures:\n  - preparation: ${word}\n`,
  },
  {
    what: 'a dressing',
    code: 'allergy/dressing',
    rows: tables.dressings.rows,
    note: (word) =>
      `patient: {allergies: [bacitracin, neomycin, adhesive, latex]}\nprocedures:\n  - dressing: ${word}\n`,
  },
];

const isError = ({ code, severity }: { code: string; severity: string }, wanted: string): boolean =>
  code === wanted && severity === 'error';

/** Shorter words are one letter from too many others: what is not understood of them is said, and no more. */
const shortest = 5;

/** At most so far apart that each danger is tried often enough for its share to say something. */
const every = Math.min(step(17), 170);

describe('one slip in any word that makes a danger', function () {
  this.timeout(120_000);
  for (const { what, code, rows, note } of dangers)
    it(`keeps its error, or is reported as loudly as may be: ${what}`, () => {
      let [tried, kept, at] = [0, 0, 0];
      const silent: string[] = [];
      for (const word of rows.flatMap(wordsRead)) {
        if (word.replace(/[^a-z]/gi, '').length < shortest) continue;
        if (!judgeBy(code, note(JSON.stringify(word))).some((one) => isError(one, code))) continue;
        for (const typed of slipsOf(word)) {
          if (at++ % every !== 0) continue;
          const text = note(JSON.stringify(typed));
          const { findings } = judge(text);
          tried += 1;
          const from = text.indexOf(JSON.stringify(typed));
          const isSaid = findings.some(
            (one) =>
              one.severity !== 'information' &&
              (one.code.split('/')[0] === code.split('/')[0] ||
                (one.start <= from + typed.length + 2 && one.end >= from)),
          );
          if (findings.some((one) => isError(one, code))) kept += 1;
          else if (!isSaid) silent.push(typed);
        }
      }
      assert.ok(tried > (every > 17 ? 20 : 40), `${tried} tried`);
      assert.ok(kept / tried > 0.9, `${kept} of ${tried} kept the error`);
      // A dressing that nobody knows is information.
      assert.ok(silent.length <= Math.ceil(tried * (what === 'a dressing' ? 0.03 : 0.01)), silent.join());
    });
});

describe('a slip in what a free text tells of an injection', () => {
  const note = (remark: string): string =>
    `visit: 2026-03-02\nprocedures:\n  - site: left upper back\n    anesthetic: {agent: lidocaine, concentration: 1%, volume: 1 mL}\n    remarks: ${JSON.stringify(remark)}\n`;
  const isTold = (remark: string): boolean =>
    judge(note(remark)).findings.some((one) => isError(one, 'dose/outside-entry'));

  it('hides no injection, wherever it is', () => {
    const line = '2 mL more of 1% lidocaine for pain';
    assert.ok(isTold(line));
    for (const word of ['mL', 'lidocaine'])
      for (const typed of slipsOf(word)) {
        if (/^uL$/i.test(typed)) continue;
        assert.ok(isTold(line.replace(word, typed)), typed);
      }
    for (const typed of ['lidocai:e', 'lidoc aine', 'lidocainefor', 'lido-caine', 'lid.ocaine'])
      assert.ok(isTold(line.replace('lidocaine', typed)), typed);
    for (const typed of [
      '2 mLmore of 1% lidocaine',
      '2 mlL of lidocaine',
      '2-mL of lidocaine',
      '2 mm more of lidocaine',
      '2 m, more of 1% lidocaine',
    ])
      assert.ok(isTold(typed), typed);
  });

  it('is not seen in what is measured otherwise', () => {
    for (const remark of [
      '4 mm punch through lidocaine wheal',
      'waited 5 min after lidocaine',
      'lidocaine 2 days ago without trouble',
      'on 2 L oxygen, lidocaine tolerated',
      '20 mg of lidocaine at most',
      'took 2 mm more, lidocaine held',
      'a 2 cm bleb of lidocaine',
    ])
      assert.ok(!isTold(remark), remark);
  });
});
