import assert from 'node:assert/strict';
import { checkOf, messageOf } from '../../../src/checks/index.ts';
import { referenceTables } from '../../../src/practice/tables.ts';
import { fixed, flags, judgeBy, silent } from '../tester.ts';

describe('quantity/no-such-date', () => {
  it('points at the date', () => {
    flags('quantity/no-such-date', 'visit: ⟦2026-02-30⟧ 10:05\n', { severity: 'error' });
    flags('quantity/no-such-date', 'patient: {born: ⟦1961-13-09⟧}\n', { severity: 'error' });
    silent('quantity/no-such-date', 'visit: 2024-02-29\n');
  });
});

describe('quantity/date-form', () => {
  it('names both readings and prefers neither', () => {
    const text = 'visit: 03/02/2026\n';
    flags('quantity/date-form', 'visit: ⟦03/02/2026⟧\n', { severity: 'error' });
    const [finding] = judgeBy('quantity/date-form', text);
    const fixes = checkOf('quantity/date-form')!.fix!({ text, tables: referenceTables }, finding!);
    assert.deepEqual(
      fixes.map(({ title, sure }) => [title, sure]),
      [
        ['Write 2026-03-02', false],
        ['Write 2026-02-03', false],
      ],
    );
  });

  it('writes the one date that is meant', () => {
    assert.equal(fixed('quantity/date-form', 'visit: 2 March 2026\n', '2026-03-02'), 'visit: 2026-03-02\n');
    assert.equal(fixed('quantity/date-form', 'visit: 2026-3-2\n', '2026-03-02'), 'visit: 2026-03-02\n');
    silent('quantity/date-form', 'visit: 2026-03-02\n');
  });
});

describe('quantity/no-such-time', () => {
  it('points at the time', () => {
    flags('quantity/no-such-time', 'visit: 2026-03-02 ⟦25:05⟧\n', { severity: 'error' });
    flags('quantity/no-such-time', 'time-out: ⟦10:60⟧\n', { severity: 'error' });
    silent('quantity/no-such-time', 'visit: 2026-03-02 9:05\ntime-out: done\n');
  });

  it('says of words behind a date where they belong', () => {
    const told = (text: string): string =>
      `procedures:\n  - specimen: {results: [{received: 2026-03-09, told: ${text}}]}\n`;
    for (const text of ['2026-03-09 ⟦by phone⟧', '2026-03-09 ⟦(voicemail)⟧', '"2026-03-09, ⟦by phone⟧"']) {
      const [finding] = flags('quantity/no-such-time', told(text), {
        severity: 'error',
        today: '2026-03-10',
      });
      assert.match(messageOf(finding!), /after the date.*Write the date alone/);
    }
    const [finding] = flags('quantity/no-such-time', told('2026-03-09 ⟦25:05⟧'), { today: '2026-03-10' });
    assert.match(messageOf(finding!), /clock time/);
    silent('quantity/no-such-time', told('{on: 2026-03-09, how: phone}'), { today: '2026-03-10' });
  });

  it('takes what says that a specimen went for that, and asks for the day', () => {
    const specimen = (sent: string): string => `procedures:\n  - specimen: {label: A, sent: ${sent}}\n`;
    for (const words of ['yes', 'sent', 'to lab', 'today', 'to pathology'])
      flags('quantity/date-form', specimen(`⟦${words}⟧`), { severity: 'warning' });
    for (const words of ['2026-03-02', '??']) silent('quantity/date-form', specimen(words));
    flags('quantity/unreadable', specimen('⟦no⟧'), { severity: 'error' });
    silent('follow-up/specimen-not-sent', `visit: 2026-03-02\n${specimen('yes')}`, { today: '2026-04-20' });
  });
});
