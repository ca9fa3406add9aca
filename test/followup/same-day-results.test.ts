import assert from 'node:assert/strict';
import { scheduleOf } from '../../src/followup/schedule.ts';
import { readNote } from '../../src/note/read.ts';
import { referenceTables } from '../../src/practice/tables.ts';

const note = (first: string, second: string): string => `visit: 2026-03-02
procedures:
  - site: left upper back
    method: punch
    specimen:
      label: A
      sent: 2026-03-02
      results:
        - {received: 2026-03-09, diagnosis: psoriasis${first}}
        - {received: 2026-03-09, diagnosis: no fungi seen${second}}
`;

const tellings = (text: string): readonly (readonly [string | undefined, boolean])[] => {
  const { value } = readNote(text);
  assert.ok(value !== null);
  return scheduleOf(value, referenceTables, '2026-03-20').items.flatMap(({ kind, which, done }) =>
    kind === 'telling the patient' ? [[which, done !== undefined] as const] : [],
  );
};

describe('two results of one specimen on one day', () => {
  it('are kept apart', () => {
    assert.deepEqual(tellings(note('', '')), [
      ['2026-03-09', false],
      ['2026-03-09 2', false],
    ]);
  });

  it('are told one by one', () => {
    assert.deepEqual(tellings(note('', ', told: 2026-03-10')), [
      ['2026-03-09', false],
      ['2026-03-09 2', true],
    ]);
  });
});
