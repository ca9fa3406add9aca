import assert from 'node:assert/strict';
import { openBrief } from '../../src/documents/open-list/open-list.ts';
import { Caseload, factsOf } from '../../src/followup/caseload.ts';
import { readNote } from '../../src/note/read.ts';
import { referenceTables } from '../../src/practice/tables.ts';

const note = (result: string): string => `visit: 2026-03-02
patient: {id: C-1}
procedures:
  - {site: chin, method: shave, closure: none, specimen: {label: A, sent: 2026-03-02${result}}}
`;

const brief = (result: string, day: string): readonly string[] => {
  const caseload = new Caseload();
  caseload.set('a', factsOf(readNote(note(result)), referenceTables));
  return caseload.openOn(day).map(openBrief);
};

describe('an open item in the fewest words', () => {
  it('begins with what is overdue, and for how long', () => {
    assert.deepEqual(brief('', '2026-03-17'), ['1 day overdue; specimen A, chin']);
    assert.deepEqual(brief(', result: {received: 2026-03-09, diagnosis: melanoma}', '2026-03-12'), [
      'cannot wait, 2 days overdue; specimen A, chin',
    ]);
  });

  it('says what it is about, and when, where it is not overdue', () => {
    assert.deepEqual(brief('', '2026-03-10'), [
      'specimen A, chin; expected from 2026-03-05, overdue after 2026-03-16',
    ]);
  });
});
