import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { applyEdits } from '../../src/note/tree/edit.ts';
import { referenceTables } from '../../src/practice/tables.ts';
import { noteIndex } from '../../src/note/read.ts';
import { analyse, completionsAt, fixesAt } from '../../src/service/index.ts';
import { changeBetween, overRows } from '../../src/editor/notes/change.ts';
import { localDate } from '../../src/editor/host/clock.ts';
import { ageText, doseAnswer, readText } from '../../src/editor/commands/dose-answer.ts';
import { injectionEdit, type InjectionEntry } from '../../src/editor/commands/injection-edit.ts';
import { sampleNote } from '../../src/editor/commands/sample-note.ts';
import { snippetText } from '../../src/editor/host/snippet.ts';

const context = { tables: referenceTables, today: '2026-03-02' };

describe('the change between two texts', () => {
  it('makes the one of the other, and is no longer than it must be', () => {
    const text = fc.string({ unit: fc.constantFrom('a', 'b', '\n') });
    fc.assert(
      fc.property(text, text, (before, after) => {
        const { start, end, inserted } = changeBetween(before, after);
        assert.equal(before.slice(0, start) + inserted + before.slice(end), after);
        assert.ok(before === after ? inserted === '' && start === end : end >= start);
      }),
    );
  });

  it('is over rows where a row break comes or goes', () => {
    assert.equal(overRows('a\nb', { start: 0, end: 1, inserted: 'c' }), false);
    assert.equal(overRows('a\nb', { start: 1, end: 2, inserted: '' }), true);
    assert.equal(overRows('ab', { start: 1, end: 1, inserted: '\r' }), true);
  });
});

describe('a snippet of a completion', () => {
  it('means nothing but its text, with the caret where it belongs', () => {
    assert.equal(snippetText('visit: ', 0), 'visit: ');
    assert.equal(snippetText('volume: , ', 2), 'volume: $0, ');
    assert.equal(snippetText('a $1 }\\', 0), 'a \\$1 \\}\\\\');
  });
});

describe('today', () => {
  it('is the date on the wall', () => {
    assert.equal(localDate(new Date(2026, 2, 2, 23, 59)), '2026-03-02');
    assert.equal(localDate(new Date(2026, 2, 3, 0, 1)), '2026-03-03');
  });
});

describe('the dose before the needle', () => {
  const lidocaine = referenceTables.agents.find('lidocaine')!;

  it('is the number of the command line, with its limit and its source', () => {
    const answer = doseAnswer(
      { agent: lidocaine, mgPerMl: 10, epinephrineMicrogramsPerMl: 0, kg: 62, months: 64 * 12 },
      referenceTables,
    );
    assert.ok('headline' in answer);
    assert.equal(answer.headline, 'lidocaine 1%: at most 27.9 mL (279 mg)');
    assert.match(answer.detail, /4\.5 mg\/kg at 62 kg/);
    assert.match(answer.detail, /Source: US prescribing information/);
    assert.doesNotMatch(answer.detail, /adult is assumed/);
  });

  it('says that an adult is assumed, and why there is no answer', () => {
    const query = { agent: lidocaine, mgPerMl: 10, epinephrineMicrogramsPerMl: 0, months: undefined };
    const assumed = doseAnswer({ ...query, kg: 62 }, referenceTables);
    assert.ok('detail' in assumed && assumed.detail.includes('an adult is assumed'));
    assert.deepEqual(doseAnswer({ ...query, kg: 30 }, referenceTables), {
      why: 'under 50 kg the age is needed',
    });
  });

  it('reads answers as a note is read, and never makes anybody older', () => {
    assert.equal(
      (readText('mass', 'weight', ' 137 lb ').value as { amount: number }).amount.toFixed(2),
      '62.14',
    );
    assert.equal(readText('mass', 'weight', 'heavy').value, undefined);
    assert.equal(readText('mass', 'weight', '6200 kg').odd, true);
    assert.equal(ageText(7), '7 months');
    assert.equal(ageText(12 * 12 - 1), '11 years');
  });
});

describe('an entry of an injection', () => {
  const entry: InjectionEntry = [
    ['agent', 'lidocaine'],
    ['epinephrine', '1:100,000'],
    ['volume', '??'],
  ];

  /** The note after the entry was written at the mark `|`; undefined where there is no sure place. */
  function begun(marked: string): string | undefined {
    const offset = marked.indexOf('|');
    const text = marked.slice(0, offset) + marked.slice(offset + 1);
    const edit = injectionEdit(analyse(text, context), offset, entry);
    return edit && applyEdits(text, [edit]);
  }

  const head = 'visit: 2026-03-02\nprocedures:\n';
  const cases: readonly (readonly [string, string, string | undefined])[] = [
    [
      'begins the list of the procedure at the caret, where the schema has it',
      `${head}  - site: nose|\n    method: shave\n    hemostasis: pressure\n  - site: chin\n`,
      `${head}  - site: nose\n    method: shave\n    anesthetic:\n      - agent: lidocaine\n        epinephrine: 1:100,000\n        volume: ??\n    hemostasis: pressure\n  - site: chin\n`,
    ],
    [
      'goes to the only procedure, wherever the caret is',
      `visit: 2026-03-02|\nprocedures:\n  - site: nose\n`,
      `visit: 2026-03-02\nprocedures:\n  - site: nose\n    anesthetic:\n      - agent: lidocaine\n        epinephrine: 1:100,000\n        volume: ??\n`,
    ],
    [
      'comes behind the entries that are there',
      `${head}  - site: nose\n    anesthetic:\n    - agent: articaine # first\n      volume: 1 mL\n    hemostasis: pressure|\n`,
      `${head}  - site: nose\n    anesthetic:\n    - agent: articaine # first\n      volume: 1 mL\n    - agent: lidocaine\n      epinephrine: 1:100,000\n      volume: ??\n    hemostasis: pressure\n`,
    ],
    [
      'is quoted inside brackets',
      `${head}  - {site: nose, anesthetic: [{agent: articaine, volume: 1 mL}]|}\n`,
      `${head}  - {site: nose, anesthetic: [{agent: articaine, volume: 1 mL}, {agent: lidocaine, epinephrine: "1:100,000", volume: ??}]}\n`,
    ],
    [
      'takes the place of what was not known',
      `${head}  - site: nose\n    anesthetic: ??|\n`,
      `${head}  - site: nose\n    anesthetic:\n      - agent: lidocaine\n        epinephrine: 1:100,000\n        volume: ??\n`,
    ],
    [
      'stands at the top where there is no procedure',
      'visit: 2026-03-02|\n',
      'visit: 2026-03-02\nanesthetic:\n  - agent: lidocaine\n    epinephrine: 1:100,000\n    volume: ??\n',
    ],
    [
      'begins an empty file',
      '|',
      'anesthetic:\n  - agent: lidocaine\n    epinephrine: 1:100,000\n    volume: ??\n',
    ],
    [
      'has no sure place beside an injection that is written as one map',
      `${head}  - site: nose\n    anesthetic: {agent: articaine, volume: 1 mL}|\n`,
      undefined,
    ],
    ['is not written into a broken note', `${head}  - site: nose|\n    anesthetic: [{agent: x\n`, undefined],
    [
      'is not written into a signed note',
      `${head}  - site: nose|\nsigned: {by: K.O., at: 2026-03-02 11:00}\n`,
      undefined,
    ],
  ];
  for (const [title, before, after] of cases)
    it(title, () => {
      assert.equal(begun(before), after);
    });
});

describe('the pictures of the walkthrough', () => {
  const rowsOf = (step: string): readonly string[] =>
    [
      ...readFileSync(join(import.meta.dirname, `../../src/editor/walkthrough/${step}.svg`), 'utf8').matchAll(
        /<text[^>]*>(.*?)<\/text>/g,
      ),
    ].map(([, row = '']) => row.replace(/<[^>]*>/g, ''));
  const day = '2026-03-02';

  it('show the fix that is offered under the misspelt word, and no other', () => {
    const text = sampleNote(day);
    const rows = rowsOf('fix');
    const at = text.indexOf('presure');
    const titles = fixesAt(analyse(text, context), at, at).map(({ title }) => title);
    assert.deepEqual(
      rows.filter((row) => !text.includes(row)),
      titles,
    );
  });

  it('show words that are offered for the first gap', () => {
    const text = 'patient:\n  allergies: ';
    const offered = completionsAt(text, text.length, { ...context, shapes: noteIndex, root: 'note' });
    const labels = offered.map(({ label }) => label);
    const shown = rowsOf('write').filter((row) => !row.includes(':'));
    assert.deepEqual(shown, labels.slice(0, shown.length));
    assert.ok(shown.length > 1);
  });
});

describe('the sample note', () => {
  it('has the faults that it is to show, and no other of weight', () => {
    const { findings } = analyse(sampleNote('2026-03-02'), context).judgement;
    const grave = findings.filter(({ severity }) => severity === 'error' || severity === 'warning');
    assert.deepEqual(grave.map(({ code }) => code).sort(), [
      'dose/over-limit',
      'shape/unknown-word',
      'specimen/wrong-medium',
    ]);
  });
});
