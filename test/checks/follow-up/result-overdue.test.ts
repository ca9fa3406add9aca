import assert from 'node:assert/strict';
import { messageOf } from '../../../src/checks/index.ts';
import { flags, judgeBy, silent } from '../tester.ts';
import { note, sent } from './_results.ts';

describe('follow-up/result-overdue', () => {
  it('counts one day as one', () => {
    const said = (today: string): string =>
      messageOf(judgeBy('follow-up/result-overdue', note(sent), { today })[0]!);
    assert.match(said('2026-03-17'), / 1 day ago\./);
    assert.match(said('2026-03-18'), / 2 days ago\./);
  });
  const code = 'follow-up/result-overdue';
  const outstanding = note('      label: A\n      sent: ⟦2026-03-02⟧\n');
  const plain = outstanding.replace(/[⟦⟧]/g, '');
  it('counts ten working days', () => {
    silent(code, plain, { today: '2026-03-16' });
    flags(code, outstanding, { today: '2026-03-17', severity: 'warning' });
  });
  it('is an error from four weeks past the limit on, and never falls silent', () => {
    flags(code, outstanding, { today: '2026-04-12', severity: 'warning' });
    flags(code, outstanding, { today: '2026-04-13', severity: 'error' });
    flags(code, outstanding, { today: '2036-04-13', severity: 'error' });
  });
  it('gives cultures of fungi six weeks and of mycobacteria eight', () => {
    const fungal = plain.replace('label: A', 'tests: [fungal culture]');
    silent(code, fungal, { today: '2026-04-13' });
    flags(code, outstanding.replace('label: A', 'tests: [fungal culture]'), { today: '2026-04-14' });
    flags(code, outstanding.replace('label: A', 'tests: [AFB culture]'), { today: '2026-04-28' });
    silent(code, plain.replace('label: A', 'tests: [AFB culture]'), { today: '2026-04-27' });
  });
  it('waits for the culture after the histology of the same specimen has come', () => {
    const both = (results: string): string =>
      note(
        `      tests: [routine histology, fungal culture]\n      sent: ⟦2026-03-02⟧\n      results:\n${results}`,
      );
    flags(code, both('        - {received: 2026-03-09, diagnosis: granuloma, told: 2026-03-10}\n'), {
      today: '2026-04-14',
    });
    silent(
      code,
      both(
        '        - {received: 2026-03-09, diagnosis: granuloma, told: 2026-03-10}\n        - {received: 2026-04-10, diagnosis: no growth, told: 2026-04-10}\n',
      ).replace(/[⟦⟧]/g, ''),
      { today: '2026-04-14' },
    );
  });
  it('says one thing only of a container from which two tests are overdue, and one of each of two containers', () => {
    const two = note('      tests: [routine histology, fungal culture]\n      sent: ⟦2026-03-02⟧\n');
    const [finding] = flags(code, two, { today: '2026-05-04', severity: 'error' });
    assert.equal(finding?.args['to'], '2026-03-16');
    flags(
      code,
      note('').replace(
        'specimen:\n',
        'specimen:\n      - {medium: formalin, sent: ⟦2026-03-02⟧}\n      - {medium: formalin, sent: ⟦2026-03-02⟧}\n',
      ),
      { today: '2026-03-17' },
    );
  });
  it('says one thing only of a specimen that was never sent', () => {
    silent(code, note('      label: A\n'), { today: '2026-05-04' });
  });
  it('does not take an empty or an unfilled result for one that came', () => {
    flags(code, note('      sent: ⟦2026-03-02⟧\n      results: [{received: ??}]\n'), { today: '2026-03-17' });
  });
  it('says nothing where no day is known', () => {
    silent(code, plain, {});
  });
});
