import assert from 'node:assert/strict';
import { catalogue } from '../../../src/checks/index.ts';
import { runChecks } from '../../../src/checks/run.ts';
import { readNote } from '../../../src/note/read.ts';
import { referenceTables } from '../../../src/practice/tables.ts';
import { flags, silent } from '../tester.ts';

const note = (specimen: string, rest = ''): string =>
  `visit: 2026-03-02 10:05\nprocedures:\n  - {site: left ear, specimen: {${specimen}}}\n${rest}`;

describe('record/dates-out-of-order', () => {
  const today = '2026-04-01';

  it('flags what is dated before the visit', () => {
    flags('record/dates-out-of-order', note('sent: ⟦2026-03-01⟧'), { severity: 'error', today });
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

describe('record/date-in-future', () => {
  it('flags the visit alone where it lies in the future itself', () => {
    flags(
      'record/date-in-future',
      note('sent: 2062-03-02').replace('2026-03-02 10:05', '⟦2062-03-02 10:05⟧'),
      { severity: 'warning' },
    );
  });

  it('flags each later date that is still to come', () => {
    const findings = flags(
      'record/date-in-future',
      note(
        'sent: 2026-03-03, results: [{received: ⟦2026-03-05⟧, told: ⟦2026-03-06⟧}]',
        'events: [{on: ⟦2026-03-07⟧, kind: wound check}]\n',
      ),
      { today: '2026-03-04' },
    );
    assert.deepEqual(
      findings.map(({ form }) => form),
      ['received', 'told', 'event'],
    );
  });

  it('flags stitches that came out on a day still to come', () => {
    const out = 'visit: 2026-03-02\nprocedures:\n  - {site: left ear, sutures-out: ⟦2026-03-12⟧}\n';
    flags('record/date-in-future', out, { today: '2026-03-11' });
    silent('record/date-in-future', out.replace(/[⟦⟧]/g, ''), { today: '2026-03-12' });
    silent('record/dates-out-of-order', out.replace(/[⟦⟧]/g, '').replace('03-12', '02-12'));
  });

  it('is silent today, and where nobody said what day it is', () => {
    silent('record/date-in-future', note('sent: 2026-03-02'), { today: '2026-03-02' });
    const source = readNote(note('sent: 2062-03-02'));
    const { findings } = runChecks(catalogue, source, { tables: referenceTables, today: undefined });
    assert.ok(findings.every(({ code }) => code !== 'record/date-in-future'));
  });
});
