import assert from 'node:assert/strict';
import { flags, silent } from '../tester.ts';
import { note } from './_time-out.ts';

describe('record/time-out-late', () => {
  it('flags a time-out after the first injection, wherever that stands', () => {
    const [finding] = flags(
      'record/time-out-late',
      note('⟦10:15⟧', 'agent: lidocaine, time: 10:20', 'agent: lidocaine, time: 10:14'),
      { severity: 'warning' },
    );
    assert.deepEqual(finding?.args, { timeOut: '10:15', injection: '10:14' });
    flags(
      'record/time-out-late',
      'visit: 2026-03-02\ntime-out: ⟦10:15⟧\nanesthetic: {agent: lidocaine, time: 10:14}\n',
    );
  });

  it('is silent before or at the minute of the injection, and where a time is not known', () => {
    silent('record/time-out-late', note('10:12', 'agent: lidocaine, time: 10:12'));
    silent('record/time-out-late', note('done', 'agent: lidocaine, time: 10:12'));
    silent('record/time-out-late', note('??', 'agent: lidocaine, time: 10:12'));
    silent('record/time-out-late', note('10:15', 'agent: lidocaine'));
  });

  it('goes over midnight', () => {
    silent('record/time-out-late', note('23:55', 'agent: lidocaine, time: 00:05'));
    flags('record/time-out-late', note('⟦00:05⟧', 'agent: lidocaine, time: 23:55'));
    // Half a day apart no midnight explains it.
    flags('record/time-out-late', note('⟦20:30⟧', 'agent: lidocaine, time: 08:00'));
    silent('record/time-out-late', note('08:00', 'agent: lidocaine, time: 20:30'));
  });

  it('does not take a cream for a needle', () => {
    silent(
      'record/time-out-late',
      note('10:12', 'agent: lidocaine-prilocaine cream, amount: 2 g, time: 09:10', 'time: 10:13'),
    );
  });
});
