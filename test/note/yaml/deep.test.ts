import assert from 'node:assert/strict';
import { readNote, readPractice } from '../../../src/note/read.ts';

/** Texts that make the parser call itself ever deeper. */
const deep: readonly string[] = [
  `procedures: [\n${'  - site: left\n'.repeat(5000)}`,
  `visit: {\n${'  a: b\n'.repeat(5000)}`,
  `visit: [\n${'  a:\n    b: c\n'.repeat(4000)}`,
];

describe('thousands of lines below an open bracket', () => {
  for (const text of deep)
    it(`are one finding of that file: ${text.slice(0, 22).replaceAll('\n', ' ')}`, () => {
      for (const read of [readNote, readPractice])
        assert.deepEqual(
          read(text).problems.map(({ code }) => code),
          ['yaml/too-deep'],
        );
    });

  it('are read as far as they go where there are few', () => {
    const { root, problems } = readNote(`visit: 2026-03-02\nprocedures: [\n${'  - site: left\n'.repeat(20)}`);
    assert.ok(root !== null && problems.some(({ code }) => code === 'yaml/unclosed-bracket'));
  });
});
