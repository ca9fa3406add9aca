import assert from 'node:assert/strict';
import { readPractice } from '../../../src/note/read.ts';
import { practiceShapeProblems } from '../../../src/schema/validate.ts';
import { flags, judge, silent } from '../tester.ts';
import { before, own } from './_shape.ts';

describe('a key without a value', () => {
  it('is a warning, an error where the key is required', () => {
    flags('shape/empty-value', `${before}    ⟦lesion⟧:\n`, { severity: 'warning' });
    flags('shape/empty-value', `${before}    ⟦lesion⟧: ""\n`, { severity: 'warning' });
    flags('shape/empty-value', before.replace('method: punch', '⟦method⟧:'), { severity: 'error' });
    assert.deepEqual(own(before.replace('method: punch', 'method:')), ['shape/empty-value']);
  });

  it('is the same with a list or a map that holds nothing', () => {
    for (const key of [
      'hemostasis',
      'dressing',
      'preparation',
      'anesthetic',
      'closure',
      'specimen',
      'remarks',
    ])
      for (const value of ['[]', '[ ]'])
        flags('shape/empty-value', `${before}    ⟦${key}⟧: ${value}\n`, { severity: 'warning' });
    for (const key of ['closure', 'specimen', 'sutures-out'])
      flags('shape/empty-value', `${before}    ⟦${key}⟧: {}\n`, { severity: 'warning' });
    for (const key of ['allergies', 'implants', 'medications', 'conditions']) {
      const text = before.replace('{id: C-1}', `{id: C-1, ⟦${key}⟧: []}`);
      flags('shape/empty-value', text, { severity: 'warning' });
      const codes = judge(text.replace(/[⟦⟧]/g, '')).findings.map(({ code }) => code);
      assert.ok(!codes.includes('record/missing-keys') && !codes.includes('shape/wrong-kind'));
    }
    flags('shape/empty-value', `${before}⟦events⟧: []\n⟦aftercare⟧: {}\n`);
    flags('shape/empty-value', `${before}    specimen: {label: A, ⟦tests⟧: []}\n`);
    flags('shape/empty-value', 'visit: 2026-03-02\npatient: {id: C-1}\n⟦procedures⟧: []\n', {
      severity: 'error',
    });
  });

  it('is silent where a list says that there is nothing', () => {
    const said = '[none]';
    const key = 'hemostasis';
    silent(
      'shape/empty-value',
      `${before}    ${key}: ${said}\n    dressing: none\n    specimen: [{label: A}]\n`,
    );
    assert.deepEqual(readPractice('closed: []\n').value?.closed, []);
    assert.deepEqual(practiceShapeProblems(readPractice('closed: []\n')), []);
  });
});
