import assert from 'node:assert/strict';
import { flags, silent } from '../tester.ts';
import { note } from './_dates.ts';

describe('record/dates-out-of-order', () => {
  const today = '2026-04-01';

  it('flags what is dated before the visit', () => {
    flags('record/dates-out-of-order', note('sent: ⟦2026-03-01⟧'), { severity: 'error', today });
    flags('record/dates-out-of-order', note('collected: ⟦2026-03-01 16:20⟧'), { today });
    flags('record/dates-out-of-order', note('collected: 2026-03-04 08:10, sent: ⟦2026-03-03⟧'), { today });
    silent('record/dates-out-of-order', note('collected: 10:20, sent: 2026-03-02'), { today });
    flags('record/dates-out-of-order', note('results: [{received: ⟦2026-03-01⟧}]'), { today });
    flags('record/dates-out-of-order', note('results: [{told: ⟦2026-03-01⟧}]'), { today });
    for (const rest of [
      'events: [{on: ⟦2026-03-01⟧, kind: bleeding}]\n',
      'signed: {by: K.O., at: ⟦2026-03-01 09:00⟧}\n',
      'addenda: [{at: ⟦2026-03-01⟧, text: seen}]\n',
    ])
      flags('record/dates-out-of-order', note('label: A', rest), { today });
  });

  it('flags a result before the sending, and telling before the result', () => {
    const [received] = flags(
      'record/dates-out-of-order',
      note('sent: 2026-03-05, results: [{received: ⟦2026-03-04⟧}]'),
      { today },
    );
    assert.equal(received?.form, 'received');
    assert.deepEqual(received.args, { date: '2026-03-04', other: '2026-03-05' });
    const told = flags(
      'record/dates-out-of-order',
      note('results: [{received: 2026-03-09, told: [⟦2026-03-08⟧, 2026-03-09, {on: ⟦2026-03-07⟧}]}]'),
      { today },
    );
    assert.deepEqual(
      told.map(({ form }) => form),
      ['told', 'told'],
    );
  });

  it('flags a review and a step before their result', () => {
    for (const rest of [
      'reviewed: ⟦2026-03-08⟧',
      'reviewed: K.O. ⟦2026-03-08⟧',
      'done: excised ⟦2026-03-08⟧',
    ])
      flags('record/dates-out-of-order', note(`results: [{received: 2026-03-09, ${rest}}]`), {
        severity: 'error',
        today,
      });
    silent(
      'record/dates-out-of-order',
      note('results: [{received: 2026-03-09, reviewed: K.O. 2026-03-09, done: 2026-03-09}]'),
      { today },
    );
    silent(
      'record/dates-out-of-order',
      note('results: [{received: 2026-03-09, reviewed: K.O., done: yes}]'),
      {
        today,
      },
    );
  });

  it('says one fault once: what follows a date that is too early is measured by the visit', () => {
    flags(
      'record/dates-out-of-order',
      note('sent: ⟦2026-03-01⟧, results: [{received: 2026-03-09, told: 2026-03-10}]'),
      { today },
    );
  });

  it('is silent where all follows on the same day or later, and where a date is not known', () => {
    silent(
      'record/dates-out-of-order',
      note(
        'sent: 2026-03-02, results: [{received: 2026-03-02, told: 2026-03-02}]',
        'events: [{on: 2026-03-02}]\n',
      ),
      { today },
    );
    silent('record/dates-out-of-order', note('sent: ??, results: [{received: ??, told: 2026-03-02}]'), {
      today,
    });
    silent('record/dates-out-of-order', note('sent: 2026-03-01').replace('2026-03-02 10:05', '??'), {
      today,
    });
  });
});
