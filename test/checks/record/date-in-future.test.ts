import assert from 'node:assert/strict';
import { catalogue } from '../../../src/checks/index.ts';
import { runChecks } from '../../../src/checks/running/run.ts';
import { readNote } from '../../../src/note/read.ts';
import { referenceTables } from '../../../src/practice/tables.ts';
import { flags, silent } from '../tester.ts';
import { note } from './_dates.ts';

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

  it('flags a review and a step that are only planned', () => {
    const planned = note(
      'results: [{received: 2026-03-03, reviewed: ⟦2026-03-05⟧, done: booked for ⟦2026-03-20⟧}]',
    );
    flags('record/date-in-future', planned, { today: '2026-03-04', severity: 'warning' });
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
