import assert from 'node:assert/strict';
import fc from 'fast-check';
import { addDays } from '../../src/note/values/days.ts';
import { daysToFirstChange } from '../../src/followup/home-care.ts';
import { scheduleOf, type DueItem, type Schedule } from '../../src/followup/schedule.ts';
import { timeIn } from '../../src/followup/times.ts';
import { readNote } from '../../src/note/read.ts';
import { referenceTables } from '../../src/practice/tables.ts';
import { times } from '../share.ts';
import { tablesIn } from '../practice/tables-of.ts';

function on(today: string, text: string, practice?: string): Schedule {
  const { value } = readNote(text);
  assert.ok(value);
  return scheduleOf(value, practice === undefined ? referenceTables : tablesIn(practice), today);
}

function only({ items }: Schedule, kind: DueItem['kind']): DueItem {
  const found = items.filter((item) => item.kind === kind);
  assert.equal(found.length, 1, kind);
  return found[0]!;
}

const states = (
  days: readonly string[],
  kind: DueItem['kind'],
  text: string,
): readonly (string | undefined)[] =>
  days.map((day) => on(day, text).items.find((item) => item.kind === kind)?.state);

/** 2026-03-02 is a Monday. */
const note = (rest: string, visit = '2026-03-02'): string => `visit: ${visit}
patient: {id: C-1, born: 1961-08-09}
procedures:
  - site: left upper back
    method: punch
    size: 4 mm
${rest}`;
const sutured = note('    closure: {material: nylon, count: 2}\n    specimen: not sent, none taken\n');

describe('schedule', () => {
  describe('stitches', () => {
    // Practice leaflet on punch biopsy: back 10 to 14 days.
    it('come out in the window of the site, on a working day', () => {
      const { from, to, proposed, source } = only(on('2026-03-02', sutured), 'suture removal');
      assert.deepEqual(
        { from, to, proposed },
        { from: '2026-03-12', to: '2026-03-16', proposed: '2026-03-12' },
      );
      assert.notEqual(source, '');
    });

    it('are later, due, overdue and done', () => {
      const days = ['2026-03-11', '2026-03-12', '2026-03-16', '2026-03-17'];
      assert.deepEqual(states(days, 'suture removal', sutured), ['later', 'due', 'due', 'overdue']);
      const out = `${sutured}    sutures-out: 2026-03-14\n`;
      assert.deepEqual(states(['2026-03-13', '2026-03-14', '2027-03-17'], 'suture removal', out), [
        'due',
        'done',
        'done',
      ]);
    });

    it('are not out because of a word that may deny it', () => {
      for (const word of ['no', 'not yet', '??'])
        assert.deepEqual(
          states(['2026-03-17'], 'suture removal', `${sutured}    sutures-out: ${word}\n`),
          ['overdue'],
          word,
        );
    });

    it('are named where nobody can say when they come out', () => {
      const nowhere = note('    closure: {material: nylon, count: 2}\n').replace(
        'left upper back',
        'somewhere odd',
      );
      assert.deepEqual(
        on('2026-03-02', nowhere).undated.map(({ kind }) => kind),
        ['suture removal', 'specimen to send'],
      );
      const planned = only(on('2026-03-02', `${nowhere}    sutures-due: 2026-03-13\n`), 'suture removal');
      assert.deepEqual([planned.from, planned.to], ['2026-03-13', '2026-03-13']);
    });
  });

  describe('a result', () => {
    const sent = note('    specimen: {label: A, sent: 2026-03-02}\n');
    it('is expected after three working days and overdue after ten', () => {
      const { from, to } = only(on('2026-03-02', sent), 'result');
      assert.deepEqual([from, to], ['2026-03-05', '2026-03-16']);
      assert.deepEqual(states(['2026-03-04', '2026-03-05', '2026-03-17'], 'result', sent), [
        'later',
        'due',
        'overdue',
      ]);
    });

    it('knows the closed days and the limit of the practice', () => {
      const practice =
        'closed: [Saturday, Sunday, 2026-03-04]\noverdue: {result: 5, telling: 1, cancer: 0}\n';
      assert.equal(only(on('2026-03-02', sent, practice), 'result').to, '2026-03-10');
      const told = (diagnosis: string): DueItem =>
        only(
          on(
            '2026-03-09',
            note(
              `    specimen: {sent: 2026-03-02, result: {received: 2026-03-09, diagnosis: ${diagnosis}}}\n`,
            ),
            practice,
          ),
          'telling the patient',
        );
      assert.equal(told('psoriasis').to, '2026-03-10');
      assert.equal(told('melanoma').to, '2026-03-09');
    });

    it('is counted across months, years and leap days', () => {
      for (const [day, to] of [
        ['2024-02-19', '2024-03-04'],
        ['2023-12-22', '2024-01-05'],
        ['2026-03-23', '2026-04-06'],
        ['2026-10-20', '2026-11-03'],
      ] as const)
        assert.equal(only(on(day, note(`    specimen: {sent: ${day}}\n`, day)), 'result').to, to, day);
    });

    it('follows the whole way, and each day knows only what had happened by then', () => {
      const whole = note(`    specimen:
      label: A
      sent: 2026-03-02
      results:
        - {received: 2026-03-09, diagnosis: basal cell carcinoma, told: [{on: 2026-03-10, how: voicemail}, 2026-03-11], next: excision on 2026-03-30, done: 2026-03-31}
`);
      const open = (day: string): readonly string[] =>
        on(day, whole)
          .items.filter(({ state, atHome }) => state !== 'done' && !atHome)
          .map(({ kind, state }) => `${kind} ${state}`);
      assert.deepEqual(open('2026-03-08'), ['result due']);
      assert.deepEqual(open('2026-03-09'), ['telling the patient due', 'next step later']);
      assert.deepEqual(open('2026-03-11'), ['next step later']);
      assert.deepEqual(open('2026-03-30'), ['next step due']);
      assert.deepEqual(open('2026-03-31'), []);
    });
  });

  describe('care at home', () => {
    it('begins on the day after, in the words of the practice, and is over in silence', () => {
      const change = (practice?: string): string =>
        only(on('2026-03-02', sutured, practice), 'dressing change').from;
      assert.equal(change(), '2026-03-03');
      assert.equal(change('wound-care: {first-change: 48 hours}\n'), '2026-03-04');
      assert.deepEqual(states(['2026-03-02', '2026-03-03', '2026-03-04'], 'dressing change', sutured), [
        'later',
        'due',
        undefined,
      ]);
    });

    it('reads when the first dressing comes off', () => {
      for (const [words, days] of [
        ['next morning', 1],
        ['the following day', 1],
        ['24 hours', 1],
        ['24 h', 1],
        ['12 hours', 1],
        ['48 hours', 2],
        ['after 2 days', 2],
        ['three days', 3],
        ['same evening', 0],
        ['when it gets wet', undefined],
      ] as const)
        assert.equal(daysToFirstChange(words), days, words);
    });

    it('has no dressing to change where there is none', () => {
      const bare = on('2026-03-02', `${sutured}    dressing: none\n`).items.map(({ kind }) => kind);
      assert.ok(!bare.includes('dressing change') && bare.includes('washing'));
    });
  });

  describe('afterwards', () => {
    it('looks at scars of those who are prone to keloids, and of nobody else', () => {
      const skin = (words: string): string =>
        sutured.replace('born: 1961-08-09', `born: 1961-08-09, skin: ${words}`);
      assert.equal(only(on('2026-03-02', skin('keloids on the chest')), 'scar check').state, 'later');
      assert.equal(only(on('2026-03-02', skin('history of keloid')), 'scar check').from, '2026-05-01');
      const conditions = (words: string): string => skin(words).replace('skin:', 'conditions:');
      assert.equal(only(on('2026-03-02', conditions('[diabetes, keloids]')), 'scar check').state, 'later');
      for (const words of ['no keloids', 'fragile', 'hypertrophic cardiomyopathy'])
        for (const text of [skin(words), conditions(words)])
          assert.ok(
            on('2026-03-02', text).items.every(({ kind }) => kind !== 'scar check'),
            words,
          );
    });

    it('knows return visits that events plan, and that the patient came', () => {
      const event = (rest: string): string =>
        `${sutured}events:\n  - {on: 2026-03-05, kind: infection, outcome: "${rest}"}\n`;
      const visit = only(on('2026-03-05', event('improving, recheck in 1 week')), 'return visit');
      assert.deepEqual([visit.from, visit.state], ['2026-03-12', 'later']);
      const came = `${event('recheck in 1 week')}  - {on: 2026-03-11, kind: wound check, outcome: healed}\n`;
      assert.deepEqual(states(['2026-03-10', '2026-03-11'], 'return visit', came), ['later', 'done']);
      assert.ok(
        on('2026-03-05', event('return in 3 days if worse')).items.every(
          ({ kind }) => kind !== 'return visit',
        ),
      );
    });

    it('reads when a text plans something', () => {
      for (const [words, day] of [
        ['recheck in 6 months', '2026-09-09'],
        ['in two weeks', '2026-03-23'],
        ['excision on 2026-04-01', '2026-04-01'],
        ['see again in 2 to 3 weeks', '2026-03-23'],
        ['in a year', '2027-03-09'],
        ['tomorrow', '2026-03-10'],
        ['excision', undefined],
      ] as const)
        assert.equal(timeIn(words, '2026-03-09'), day, words);
      assert.equal(timeIn('in 1 month', '2024-01-31'), '2024-02-29');
      assert.equal(timeIn('in 12 months', '2024-02-29'), '2025-02-28');
    });
  });

  describe('whatever the note says', () => {
    const date = fc.integer({ min: -700_000, max: 2_900_000 }).map((days) => addDays('1970-01-01', days));
    it('every item has days in order, a reason and a source, and days far away are no trouble', () => {
      fc.assert(
        fc.property(date, date, date, date, (visit, sent, received, today) => {
          const text = note(
            `    closure: {material: nylon, count: 2}\n    specimen: {sent: ${sent}, result: {received: ${received}, diagnosis: melanoma, next: recheck in 6 months}}\n`,
            visit,
          );
          for (const item of on(today, text).items) {
            assert.ok(
              item.from <= item.to && item.to <= item.until,
              `${item.kind}: ${item.from} to ${item.to}`,
            );
            assert.match(item.to, /^\d{4}-\d\d-\d\d$/);
            assert.ok(item.reason !== '' && item.source !== '');
          }
        }),
        { numRuns: times(200) },
      );
    });

    it('a state never goes back as days pass, until it is done', () => {
      const order = ['later', 'due', 'overdue'];
      fc.assert(
        fc.property(fc.nat({ max: 400 }), fc.nat({ max: 400 }), (a, b) => {
          const [first, second] = [Math.min(a, b), Math.max(a, b)].map((days) =>
            on(addDays('2026-03-02', days), sutured).items.find(({ kind }) => kind === 'suture removal')!,
          );
          assert.ok(order.indexOf(first!.state) <= order.indexOf(second!.state));
        }),
      );
    });

    it('is quick with 5,000 events', () => {
      const events = Array.from(
        { length: 5000 },
        (_, at) =>
          `  - {on: 2026-03-${String((at % 28) + 1).padStart(2, '0')}, kind: infection, action: recheck in 3 days}\n`,
      );
      const { value } = readNote(`${sutured}events:\n${events.join('')}`);
      assert.ok(value);
      const began = performance.now();
      assert.equal(scheduleOf(value, referenceTables, '2026-06-01').items.length, 10_001);
      assert.ok(performance.now() - began < 2000);
    });
  });
});
