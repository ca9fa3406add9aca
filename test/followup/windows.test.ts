import assert from 'node:assert/strict';
import { check, checkPractice, messageOf } from '../../src/checks/index.ts';
import { openListFormats } from '../../src/documents/open-list/open-list.ts';
import { calendarItems, scheduleText, type NoteSchedule } from '../../src/documents/schedule/schedule.ts';
import { summaryOf } from '../../src/documents/summary/index.ts';
import { Caseload, factsOf } from '../../src/followup/caseload.ts';
import { scheduleOf, type DueItem } from '../../src/followup/schedule.ts';
import { readNote, readPractice } from '../../src/note/read.ts';
import { tablesIn } from '../practice/tables-of.ts';

interface Case {
  readonly site?: string;
  readonly patient?: string;
  readonly more?: string;
  readonly practice?: string;
  readonly today?: string;
}

/** 2026-03-02 is a Monday. */
const noteOf = ({ site = 'left upper back', patient = 'age: 40 years', more = '' }: Case): string =>
  `visit: 2026-03-02\npatient: {id: C-1, ${patient}}\nprocedures:\n  - site: ${site}\n    method: punch\n    size: 4 mm\n    closure: {material: nylon, size: 4-0, count: 5}\n    specimen: not sent, none taken\n${more}`;

interface Everywhere {
  readonly removal: DueItem | undefined;
  readonly schedule: string;
  readonly open: string;
  readonly json: string;
  readonly calendar: string;
  readonly summary: string;
  readonly findings: readonly string[];
}

function everywhere(given: Case): Everywhere {
  const { practice = '', today = '2026-03-02' } = given;
  const source = readNote(noteOf(given));
  const tables = tablesIn(practice);
  const note = source.value;
  assert.ok(note);
  const schedule: NoteSchedule = { path: 'a', note, ...scheduleOf(note, tables, today) };
  const caseload = new Caseload();
  caseload.set('a', factsOf(source, tables));
  const list = { asOf: today, notes: 1, items: caseload.openOn(today) };
  const judgement = check(source, { tables, today });
  const summary = summaryOf(source, judgement, { tables, practice: undefined, today });
  assert.ok(summary.readable);
  return {
    removal: schedule.items.find(({ kind }) => kind === 'suture removal'),
    schedule: scheduleText([schedule], today),
    open: openListFormats.text.write(list),
    json: openListFormats.json.write(list),
    calendar: calendarItems([schedule])
      .filter(({ kind }) => kind === 'suture removal')
      .map(({ reason }) => reason)
      .join('\n'),
    summary: summary.next.join('\n'),
    findings: judgement.findings.map(messageOf),
  };
}

const sutures = ({ removal }: Everywhere): DueItem => {
  assert.ok(removal);
  return removal;
};

describe('a lengthened window', () => {
  // Leaflet on punch biopsy: arms, legs and trunk 10 to 14 days; suture handbook: 5 more days with one factor.
  for (const [why, given, cause] of [
    ['the leg', { site: 'left shin' }, 'a site below the knee'],
    ['age', { patient: 'age: 84 years' }, 'old age'],
    ['diabetes', { patient: 'age: 40 years, conditions: [type 2 diabetes]' }, 'diabetes'],
  ] as const)
    it(`for ${why} is called so everywhere, and its words and days agree`, () => {
      const all = everywhere(given);
      const { from, to, reason } = sutures(all);
      assert.deepEqual([from, to], ['2026-03-16', '2026-03-21']);
      for (const text of [all.schedule, all.calendar, reason]) {
        assert.match(text, /14 to 19 days after the procedure, lengthened from 10 to 14 days/);
        assert.ok(text.includes(`because of ${cause}`), text);
      }
      for (const text of [all.open, all.json]) assert.match(text, /lengthened window/);
      assert.match(all.summary, /lengthened window from 2026-03-16 to 2026-03-21/);
      assert.doesNotMatch(all.summary, /usual/);
    });

  it('is called so by the checks', () => {
    const early = everywhere({ site: 'left shin', more: '    sutures-due: 2026-03-04\n' }).findings.join(
      '\n',
    );
    assert.match(early, /the lengthened days are 2026-03-16 to 2026-03-21/);
    const late = everywhere({ site: 'left shin', today: '2026-03-30' }).findings.join('\n');
    assert.match(late, /from 2026-03-16 to 2026-03-21 \(lengthened window\)/);
  });

  it('is not the word for a usual one', () => {
    const all = everywhere({});
    for (const text of [all.schedule, all.open, all.json, all.calendar, all.summary])
      assert.doesNotMatch(text, /lengthened/);
    assert.match(all.summary, /usual from 2026-03-12 to 2026-03-16/);
  });
});

describe('a window of the practice', () => {
  const practice = 'suture-windows: [{site: leg, from: 14, to: 20}]';
  it('is its own: its days as it set them, under its name', () => {
    const all = everywhere({ site: 'left shin', patient: 'age: 84 years', practice });
    const { from, to, reason, source } = sutures(all);
    assert.deepEqual([from, to, source], ['2026-03-16', '2026-03-22', 'practice-file']);
    assert.match(reason, /14 to 20 days after the procedure, the practice’s own window/);
    assert.match(all.summary, /the practice’s own window from 2026-03-16 to 2026-03-22/);
    for (const text of [all.schedule, all.open, all.json, all.calendar, all.summary])
      assert.doesNotMatch(text, /lengthened|usual/);
  });

  it('says that something makes the wound heal late, and changes nothing', () => {
    const { steps } = sutures(everywhere({ site: 'left shin', practice }));
    assert.ok(steps.some(({ text }) => /below the knee.*practice’s own window is used as it is/.test(text)));
  });
});

describe('a planned day', () => {
  it('is never best outside of the window', () => {
    const outside = { more: '    sutures-due: 2026-03-20\n' };
    const { schedule, open, calendar } = everywhere(outside);
    for (const text of [schedule, open, calendar]) {
      assert.doesNotMatch(text, /best/i);
      assert.match(text, /planned for 2026-03-20/i);
    }
  });

  it('is not best, but the next day open, where the practice is closed in the whole window', () => {
    const practice = 'suture-windows: [{site: back, from: 5, to: 6}]';
    const { schedule, open, calendar } = everywhere({ practice });
    for (const text of [schedule, open, calendar]) {
      assert.doesNotMatch(text, /best|planned/i);
      assert.match(text, /closed on each of these days; open again on 2026-03-09/i);
    }
  });

  it('is best in the window, where it is the first that is open', () => {
    const practice = 'suture-windows: [{site: back, from: 5, to: 9}]';
    const { schedule, open, calendar } = everywhere({ practice });
    for (const text of [schedule, open, calendar]) assert.match(text, /best on 2026-03-09/i);
  });
});

describe('overdue', () => {
  it('counts from the last day of the window, whatever day is planned', () => {
    const more = '    sutures-due: 2026-03-20\n';
    assert.equal(sutures(everywhere({ more, today: '2026-03-16' })).state, 'due');
    assert.equal(sutures(everywhere({ more, today: '2026-03-17' })).state, 'overdue');
    assert.match(everywhere({ more, today: '2026-03-18' }).open, /overdue since 2026-03-16, 2 days/);
  });

  it('counts a result from the day it was sent, else from the visit', () => {
    const result = (specimen: string): string | undefined => {
      const { value } = readNote(
        `visit: 2026-03-02\nprocedures: [{site: chin, method: shave, specimen: {label: A${specimen}}}]`,
      );
      assert.ok(value);
      return scheduleOf(value, tablesIn(''), '2026-03-02').items.find(({ kind }) => kind === 'result')?.to;
    };
    // 10 working days.
    assert.equal(result(', sent: 2026-03-05'), '2026-03-19');
    assert.equal(result(''), '2026-03-16');
  });
});

describe('names of sites in the practice file', () => {
  for (const [name, site] of [
    ['cheek', 'left malar cheek'],
    ['finger', 'right index finger'],
    ['toe', 'left great toe'],
    ['lower leg', 'left shin'],
    ['lower leg', 'right calf'],
    ['forearm', 'left dorsal forearm'],
    ['trunk', 'left upper back'],
    ['trunk', 'left upper chest'],
    ['ankle', 'right medial malleolus'],
    ['wrist', 'left volar wrist'],
    ['thigh', 'left anterior thigh'],
    ['fingernail', 'left thumbnail'],
    ['face', 'left cheek'],
    ['scalp', 'vertex of the scalp'],
  ] as const)
    it(`are used for narrower sites: ${name} for ${site}`, () => {
      const practice = `suture-windows: [{site: ${name}, from: 8, to: 9}]`;
      const { from, to, source } = sutures(everywhere({ site, practice }));
      assert.deepEqual([from, to, source], ['2026-03-10', '2026-03-11', 'practice-file']);
    });

  it('are not used for broader sites, or others', () => {
    for (const [name, site] of [
      ['shin', 'left lower leg'],
      ['cheek', 'left buccal mucosa'],
      ['trunk', 'left forearm'],
    ] as const) {
      const practice = `suture-windows: [{site: ${name}, from: 8, to: 9}]`;
      assert.notEqual(everywhere({ site, practice }).removal?.source, 'practice-file');
    }
  });

  it('are refused with a finding where they are none', () => {
    for (const name of ['left cheek', 'extremities', 'everywhere else'])
      assert.deepEqual(
        checkPractice(readPractice(`suture-windows: [{site: ${name}, from: 8, to: 9}]`)).map(
          ({ code }) => code,
        ),
        ['practice/unknown-site'],
        name,
      );
  });
});

describe('a partial removal', () => {
  const some = { more: '    sutures-out: {on: 2026-03-13, by: N.B., count: 3}\n' };

  it('leaves the rest open', () => {
    const all = everywhere({ ...some, today: '2026-03-17' });
    assert.equal(sutures(all).state, 'overdue');
    assert.match(all.open, /2 of 5 stitches still in/);
    assert.match(all.schedule, /2 of 5 stitches still in/);
    assert.match(all.summary, /sutures out 2026-03-13, by N\.B\., 3 stitches; 2 of 5 stitches still in/);
  });

  it('is whole where all are out, or nobody counted, or one thread ran through', () => {
    for (const count of ['count: 5', '']) {
      const more = `    sutures-out: {on: 2026-03-13, ${count}}\n`;
      assert.equal(sutures(everywhere({ more, today: '2026-03-17' })).state, 'done', count);
    }
  });

  it('is whole once the list of days has all of them, and is done on the last', () => {
    const first = '{on: 2026-03-11, by: N.B., count: 2}';
    const more = (second: string): string =>
      `    sutures-out: [${first}, {on: 2026-03-14, by: N.B., ${second}}]\n`;
    assert.equal(sutures(everywhere({ more: more('count: 3'), today: '2026-03-17' })).state, 'done');
    const some = everywhere({ more: more('count: 2'), today: '2026-03-17' });
    assert.equal(sutures(some).state, 'overdue');
    assert.match(some.open, /1 of 5 stitches still in/);
    assert.match(some.summary, /sutures out 2026-03-11, by N\.B\., 2 stitches/);
    assert.match(some.summary, /sutures out 2026-03-14, by N\.B\., 2 stitches; 1 of 5 stitches still in/);
  });

  it('is one where an event says that only some came out', () => {
    const more = (action: string): string =>
      `events:\n  - {on: 2026-03-13, kind: suture removal, action: ${action}}\n`;
    for (const action of ['every other stitch removed', 'half of the stitches out', 'partial removal'])
      assert.equal(sutures(everywhere({ more: more(action), today: '2026-03-17' })).state, 'overdue', action);
    assert.equal(sutures(everywhere({ more: more('all out'), today: '2026-03-17' })).state, 'done');
  });
});

describe('stitches that only hemostasis names', () => {
  const state = (closure: string): string | undefined => {
    const { value } = readNote(
      `visit: 2026-03-02\nprocedures: [{site: left upper back, method: excisional, hemostasis: [pressure, suture]${closure}}]`,
    );
    assert.ok(value);
    const { items, undated } = scheduleOf(value, tablesIn(''), '2026-03-02');
    return (
      items.find(({ kind }) => kind === 'suture removal')?.state ??
      undated.find(({ kind }) => kind === 'suture removal')?.why
    );
  };

  it('are none beside glue or strips', () => {
    for (const closure of ['tissue glue', 'adhesive strips', '[adhesive strips, tissue glue]'])
      assert.equal(state(`, closure: ${closure}`), undefined, closure);
  });

  it('are asked for where nothing is said of the closure', () => {
    assert.match(state('') ?? '', /closure/);
  });
});
