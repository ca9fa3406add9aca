import assert from 'node:assert/strict';
import { fixed, flags, judgeBy, silent } from '../tester.ts';

const code = 'quantity/relative-day';

const stitches = (due: string): string =>
  `visit: 2026-03-02\nprocedures:\n  - {site: left cheek, method: punch, closure: {material: nylon, count: 2}, sutures-due: ${due}}\n`;

const step = (next: string): string =>
  `visit: 2026-03-02\nprocedures:\n  - site: left cheek\n    method: punch\n    specimen: {label: A, result: {received: 2026-03-09, diagnosis: psoriasis, next: ${next}}}\n`;

const dayOf = (text: string): unknown => judgeBy(code, text)[0]?.args['day'];

describe('quantity/relative-day', () => {
  it('counts the day of the stitches from the visit', () => {
    for (const [words, day] of [
      ['in 1 week', '2026-03-09'],
      ['10 days', '2026-03-12'],
      ['in 10-14 days', '2026-03-12'],
      ['two weeks', '2026-03-16'],
      ['1 wk', '2026-03-09'],
      ['7d', '2026-03-09'],
      ['2 weeks post-op', '2026-03-16'],
      ['POD 7', '2026-03-09'],
      ['in a month', '2026-04-02'],
      ['tomorrow', '2026-03-03'],
    ] as const) {
      flags(code, stitches(`⟦${words}⟧`), { severity: 'hint' });
      assert.equal(dayOf(stitches(words)), day, words);
      silent('quantity/unreadable', stitches(words));
    }
  });

  it('counts a visit to look again from the visit, and a step from its result', () => {
    flags(code, step('recheck ⟦in 6 months⟧'), { severity: 'hint' });
    assert.equal(dayOf(step('recheck in 6 months')), '2026-09-02');
    assert.equal(dayOf(step('skin check 6 months')), '2026-09-02');
    assert.equal(dayOf(step('excision in 2 weeks')), '2026-03-23');
    // Counted from the visit it would be over before anybody knew of it.
    assert.equal(dayOf(step('recheck in 1 week')), '2026-03-16');
  });

  it('writes the day where the words mean one', () => {
    assert.equal(fixed(code, stitches('in 1 week'), 'Write'), stitches('2026-03-09'));
    assert.equal(fixed(code, stitches('"in 1 week"'), 'Write'), stitches('"2026-03-09"'));
    assert.equal(fixed(code, step('recheck in 6 months'), 'Write'), step('recheck on 2026-09-02'));
    silent(code, stitches('2026-03-09'));
    silent(code, step('recheck on 2026-09-02'));
    for (const text of [
      stitches('10-14 days'),
      step('recheck in 2 to 3 months'),
      step('skin check every 6 months'),
      step('recheck in about 6 months'),
    ])
      assert.throws(() => fixed(code, text, 'Write'), /no fix is titled/);
  });

  it('is silent where nothing is planned, no day is counted, or nobody knows from which', () => {
    silent(code, step('none needed'));
    silent(code, step('recheck prn'));
    silent(code, stitches('??'));
    silent(code, stitches('in 1 week').replace('visit: 2026-03-02', 'visit: ??'));
    flags('quantity/unreadable', stitches('⟦next week⟧'));
  });

  it('lets the closure be judged by the day', () => {
    flags('closure/removal-late', stitches('⟦in 4 weeks⟧'));
    silent('closure/removal-late', stitches('in 1 week'));
  });
});
