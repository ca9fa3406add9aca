import assert from 'node:assert/strict';
import { checkPractice } from '../../../src/checks/index.ts';
import type { Finding } from '../../../src/note/tree/finding.ts';
import { readPractice } from '../../../src/note/read.ts';
import { judge } from '../tester.ts';

const text =
  'visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: left cheek\n    method: punch\n' +
  '    lesion:\n  - site: left upper back\n    method: shave\n    hemostasis: pressure\n';

const partOf = (findings: readonly Finding[], code: string, source = text): readonly (string | undefined)[] =>
  findings
    .filter((one) => one.code === code)
    .map(({ missingFrom }) => missingFrom && source.slice(missingFrom.start, missingFrom.end).trim());

describe('the part that something is missing from', () => {
  const { findings } = judge(text);
  const first = 'site: left cheek\n    method: punch\n    lesion:';

  it('is the map that the finding points to', () => {
    assert.deepEqual(partOf(findings, 'hemostasis/missing'), [first]);
    assert.deepEqual(partOf(findings, 'record/missing-allergies'), ['{id: C-1}']);
    assert.equal(partOf(findings, 'specimen/missing').length, 2);
  });

  it('is the map around a key whose value is not written yet', () => {
    assert.deepEqual(partOf(findings, 'shape/empty-value'), [first]);
  });

  it('is there for a practice file too', () => {
    const practice = 'stock:\n  - product: blue vial\n';
    const parts = partOf(checkPractice(readPractice(practice)), 'shape/missing-key', practice);
    assert.ok(parts.length > 0);
    for (const part of parts) assert.ok(part === 'product: blue vial' || part === practice.trim(), part);
  });

  it('is absent where a finding reports what is written', () => {
    const { findings: written } = judge(`${text}    depth: lesionel\n`);
    assert.deepEqual(partOf(written, 'shape/unknown-word'), [undefined]);
  });
});
