import assert from 'node:assert/strict';
import { flags, silent } from '../tester.ts';

const note = (timeOut: string, ...injections: string[]): string =>
  `visit: 2026-03-02\ntime-out: ${timeOut}\nprocedures:\n${injections
    .map((one) => `  - {site: left ear, anesthetic: {${one}}}\n`)
    .join('')}`;

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

describe('record/time-out-not-held', () => {
  it('flags the word', () => {
    flags('record/time-out-not-held', note('⟦no⟧'), { severity: 'warning' });
  });

  it('is silent where it was held or is not yet known', () => {
    for (const timeOut of ['done', '10:12', '??']) silent('record/time-out-not-held', note(timeOut));
  });
});

describe('record/times-out-of-order', () => {
  const code = 'record/times-out-of-order';
  const at = (visit: string, timeOut: string, ...injections: string[]): string =>
    note(timeOut, ...injections).replace('2026-03-02', `2026-03-02${visit}`);

  it('flags a time-out or an injection long before the visit', () => {
    flags(code, at(' 10:05', '⟦09:12⟧', 'agent: lidocaine, time: 10:13'), { severity: 'warning' });
    flags(code, at(' 10:05', 'done', 'agent: lidocaine, time: ⟦09:13⟧'));
    flags(code, at(' 00:10', '⟦23:20⟧'));
  });

  it('is silent within half an hour, over midnight, for a cream, and where no time is known', () => {
    silent(code, at(' 10:05', '09:40', 'agent: lidocaine, time: 09:50'));
    silent(code, at(' 23:50', '23:55', 'agent: lidocaine, time: 00:05'));
    silent(code, at(' 10:05', '10:10', 'agent: lidocaine-prilocaine cream, amount: 1 g, time: 08:30'));
    silent(code, at('', '08:00', 'agent: lidocaine, time: 08:13'));
  });

  it('says one thing only of an injection before the time-out', () => {
    const both = at(' 10:05', '10:12', 'agent: lidocaine, time: 09:13');
    silent(code, both);
    flags('record/time-out-late', both.replace('10:12', '⟦10:12⟧'));
  });
});
