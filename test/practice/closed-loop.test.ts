import assert from 'node:assert/strict';
import { catalogue } from '../../src/checks/index.ts';
import { readPractice } from '../../src/note/read.ts';
import { closedLoop } from '../../src/practice/closed-loop.ts';
import { layOver, referenceTables } from '../../src/practice/tables.ts';

const approved = 'follow-up-approved: {by: K.O., on: 2026-01-05, reason: holidays}\n';
const laid = (text: string, trusted = true): ReturnType<typeof layOver> =>
  layOver(readPractice(text).value, { trusted });
const codes = (text: string, trusted = true): readonly string[] =>
  laid(text, trusted).problems.map(({ code, form }) => `${code} ${form}`);

describe('the closed loop', () => {
  it('knows the severities of its checks as the catalogue has them', () => {
    for (const [code, severity] of closedLoop)
      assert.equal(catalogue.find((check) => check.code === code)?.severity, severity, code);
  });

  it('keeps the severity of a check that would be lowered or off, and takes one that is raised', () => {
    for (const [code, severity] of closedLoop)
      for (const own of ['off', 'hint']) {
        const { tables, problems } = laid(`severities: {${code}: ${own}}\n`);
        assert.equal(tables.severities.get(code), undefined);
        assert.deepEqual(
          problems.map(({ code: one, args }) => [one, args]),
          [['practice/looser-follow-up', { what: code, own, usual: severity }]],
        );
      }
    const { tables, problems } = laid(
      'severities: {follow-up/step-not-done: error, record/missing-lesion: off}\n',
    );
    assert.equal(tables.severities.get('follow-up/step-not-done'), 'error');
    assert.equal(tables.severities.get('record/missing-lesion'), 'off');
    assert.deepEqual(problems, []);
  });

  it('uses no term of more than twice the usual one', () => {
    const most = { result: 20, 'fungal-culture': 84, 'mycobacterial-culture': 112, telling: 6, cancer: 2 };
    for (const [key, days] of Object.entries(most)) {
      assert.deepEqual(codes(`overdue: {${key}: ${days}}\n`), [], key);
      assert.deepEqual(codes(`overdue: {${key}: ${days + 1}}\n`), ['practice/looser-follow-up term'], key);
      assert.deepEqual(laid(`overdue: {${key}: ${days + 1}}\n`).tables.overdue, referenceTables.overdue);
    }
    assert.equal(laid('overdue: {result: 20}\n').tables.overdue.result, 20);
  });

  it('uses no window that ends at more than twice the latest published day', () => {
    const of = (to: number): string => `suture-windows: [{site: eyelid, from: 3, to: ${to}}]\n`;
    assert.equal(laid(of(7)).tables.practiceWindows.length, 1);
    assert.deepEqual(laid(of(60)).tables.practiceWindows, []);
    assert.deepEqual(codes(of(60)), ['practice/looser-follow-up window']);
  });

  it('uses what somebody approved, and says who', () => {
    const text = `${approved}overdue: {result: 200}\nseverities: {follow-up/result-overdue: off}\nsuture-windows: [{site: eyelid, from: 3, to: 60}]\n`;
    const { tables, problems } = laid(text);
    assert.deepEqual(problems, []);
    assert.equal(tables.overdue.result, 200);
    assert.equal(tables.severities.get('follow-up/result-overdue'), 'off');
    assert.equal(tables.practiceWindows.length, 1);
    assert.deepEqual(tables.loosenedFollowUp.map(({ own }) => own).sort(), [
      '200 working days',
      'day 60',
      'off',
    ]);
    assert.deepEqual(tables.loosenedFollowUp[0]?.approval, {
      by: 'K.O.',
      on: '2026-01-05',
      reason: 'holidays',
    });
  });

  it('uses nothing in restricted mode, nor where the approval lacks something', () => {
    const text = `${approved}overdue: {result: 200}\n`;
    assert.deepEqual(codes(text, false), ['practice/loosening-ignored followUp']);
    assert.equal(laid(text, false).tables.overdue.result, 10);
    assert.deepEqual(codes(text.replace('by: K.O., ', '')), ['practice/looser-follow-up term']);
  });
});
