import assert from 'node:assert/strict';
import { analysePractice, hintsIn, hoverAt, lensesOf, linksOf, statusOf } from '../../src/service/index.ts';
import { analysed, sampleTables, today } from './notes.ts';

const injection = '{agent: lidocaine, concentration: 1%, epinephrine: "1:100,000", volume: 1.5 mL}';
const noteWith = (patient: string): string => `wheal: 1
visit: 2026-03-02
clinician: K.O.
patient: {id: C-1, born: 1961-08-09, allergies: none${patient}}
procedures:
  - site: left cheek
    method: punch
    anesthetic: ${injection}
    closure: {material: nylon, size: 5-0}
    sutures-due: 2026-03-09
  - site: right cheek
    method: shave
    anesthetic:
      - {agent: lidocaine, concentration: 1%, volume: 2 mL}
  - site: nose
    method: shave
`;
const note = noteWith(', weight: 62 kg');
const weightless = noteWith('');

const hints = (text: string): readonly (readonly [string, string])[] =>
  hintsIn(analysed(text), 0, text.length).map((hint) => [
    /\S+(?: mL)?$/.exec(text.slice(0, hint.offset))?.[0] ?? '',
    hint.text,
  ]);

describe('hints', () => {
  it('show mg, share of the limit and epinephrine behind a volume, and the weekday of a planned removal', () => {
    assert.deepEqual(hints(note), [
      ['1.5 mL', '15 mg · 3.5% of limit · 15 mcg epinephrine'],
      ['2026-03-09', 'Monday'],
      ['2 mL', '20 mg · 7.2% of limit'],
    ]);
  });

  it('show the day that an interval means', () => {
    const counted = note.replace('2026-03-09', 'in 1 week');
    assert.deepEqual(hints(counted)[1], ['week', '2026-03-09, Monday']);
    const next = `${note}    specimen: {label: A, result: {received: 2026-03-09, next: recheck in 6 months}}\n`;
    assert.deepEqual(hints(next).at(-1), ['months', '2026-09-02, Wednesday']);
  });

  it('show mg and share of a session behind an injected drug', () => {
    const injected = (drug: string): string =>
      `visit: 2026-03-02\nprocedures:\n  - method: injection\n    injected: ${drug}\n`;
    assert.deepEqual(hints(injected('{drug: triamcinolone, concentration: 10 mg/mL, volume: 0.6 mL}')), [
      ['0.6 mL', '6 mg · 15% of a session'],
    ]);
    assert.deepEqual(hints(injected('{drug: bleomycin, concentration: 1 unit/mL, volume: 0.6 mL}')), []);
  });

  it('stand for the range that is asked for alone', () => {
    const from = note.indexOf('right cheek');
    assert.deepEqual(
      hintsIn(analysed(note), from, note.length).map(({ text }) => text),
      ['20 mg · 7.2% of limit'],
    );
  });

  it('say of a dose that is not judged why it is not', () => {
    const [first] = hintsIn(analysed(weightless), 0, weightless.length);
    assert.match(first?.tooltip ?? '', /not judged: no weight/);
  });
});

describe('lenses', () => {
  it('stand over the visit with its share, what is open, summary and handout', () => {
    const lenses = lensesOf(analysed(note)).filter(({ procedure }) => procedure === undefined);
    assert.deepEqual(
      lenses.map(({ command }) => command),
      ['dose', 'findings', 'summary', 'handout'],
    );
    assert.equal(lenses[0]?.title, '10.6% of the limit');
    assert.match(lenses[1]?.title ?? '', /^\d+ open$/);
  });

  it('stand over each procedure with what was given there and what is left of its product', () => {
    const lenses = lensesOf(analysed(note)).filter(({ procedure }) => procedure !== undefined);
    assert.deepEqual(
      lenses.map(({ procedure, title, start, end }) => [procedure, note.slice(start, end), title]),
      [
        [0, 'site', '15 mg lidocaine with epinephrine · 38.7 mL left'],
        [1, 'site', '20 mg lidocaine · 24.9 mL left'],
      ],
    );
  });

  it('say where the dose can not be judged, and leave out what would be left', () => {
    const lenses = lensesOf(analysed(weightless));
    assert.equal(lenses[0]?.title, 'Dose not judged: no weight');
    assert.ok(lenses.every(({ title }) => !title.includes('left')));
    assert.deepEqual(lensesOf(analysed('- a list')), []);
  });
});

describe('the status', () => {
  it('is the share of the limit, what is open and the version, in words for a screen reader too', () => {
    const status = statusOf(analysed(note));
    assert.match(status.text, /^10\.6% of limit · \d+ open$/);
    assert.match(status.spoken, /^The visit’s dose is 10\.6 percent of its limit\. .*Format version 1\.$/);
    assert.deepEqual([status.judged, status.why, status.format], [true, undefined, '1']);
    assert.equal(status.counts.error, 0);
  });

  it('says that nothing was judged, and why', () => {
    const newer = statusOf(analysed('wheal: 7\nvisit: 2026-03-02\n'));
    assert.equal(newer.judged, false);
    assert.match(newer.text, /dose not judged/);
    assert.match(newer.spoken, /Not judged: /);
    const light = statusOf(analysed(weightless));
    assert.deepEqual([light.judged, light.why, light.fraction], [false, 'no weight', null]);
    assert.notEqual(light.severity, 'none');
  });

  it('never shows a clean state for a dose over the limit that can not be judged in full', () => {
    const text = weightless.replace('volume: 2 mL', 'volume: 90 mL');
    const status = statusOf(analysed(text));
    assert.match(status.text, /^over the limit/);
    assert.equal(status.severity, 'error');
  });

  it('counts accepted findings, but not as open', () => {
    const text = note.replace(
      '    method: punch\n',
      '    method: punch\n    accepted: [{check: record/missing-depth, reason: seen, by: K.O.}]\n',
    );
    const open = (of: string): number => Number(/(\d+) open/.exec(statusOf(analysed(of)).text)?.[1]);
    assert.equal(open(text), open(note) - 1);
  });
});

describe('a practice file', () => {
  const practice = 'wheal: 1\nname: Example\nseverities:\n  record/missing-depth: off\n  dose/nothing: off\n';
  const analysis = analysePractice(practice, { tables: sampleTables, today });

  it('has hovers and links of its own, and no dose', () => {
    assert.match(hoverAt(analysis, practice.indexOf('name') + 1)?.markdown ?? '', /Name of the practice/);
    assert.deepEqual(
      linksOf(analysis).map(({ code }) => code),
      ['record/missing-depth'],
    );
    assert.deepEqual([hintsIn(analysis, 0, practice.length), lensesOf(analysis)], [[], []]);
    assert.equal(statusOf(analysis).why, undefined);
  });
});
