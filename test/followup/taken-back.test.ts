import assert from 'node:assert/strict';
import { nextOf } from '../../src/documents/summary/next.ts';
import { scheduleOf } from '../../src/followup/schedule.ts';
import { readNote } from '../../src/note/read.ts';
import { referenceTables } from '../../src/practice/tables.ts';
import { flags, silent } from '../checks/tester.ts';

const note = (told: string, addenda: string): string => `visit: 2026-03-02
clinician: K.O.
procedures:
  - site: left upper back
    method: shave
    specimen: {label: A, sent: 2026-03-02, result: {received: 2026-03-09, diagnosis: psoriasis, reviewed: K.O., told: ${told}}}
  - site: right ear
    method: shave
    specimen: {label: B, sent: 2026-03-02, result: {received: 2026-03-09, diagnosis: psoriasis, reviewed: K.O., told: 2026-03-10}}
addenda: [${addenda}]
`;

/** The labels of the results that the patient has still to be told. */
const open = (told: string, addenda: string): readonly string[] => {
  const { value } = readNote(note(told, addenda));
  assert.ok(value !== null);
  return scheduleOf(value, referenceTables, '2026-03-20').items.flatMap(({ kind, label, done }) =>
    kind === 'telling the patient' && done === undefined ? [label ?? ''] : [],
  );
};

const added = (more: string): string => `{at: 2026-03-12 09:00, by: K.O., ${more}}`;

describe('a result that was marked told by mistake', () => {
  it('is open again where an addendum names it', () => {
    assert.deepEqual(open('2026-03-10', ''), []);
    assert.deepEqual(open('2026-03-10', added('text: wrong chart, not-told: A')), ['A']);
    assert.deepEqual(open('2026-03-10', added('text: wrong chart, not-told: [specimen A, B]')), ['A', 'B']);
    assert.deepEqual(open('2026-03-10', added('text: wrong chart, not-told: A and B')), ['A', 'B']);
    assert.deepEqual(open('{by: M.R., how: telephone}', added('text: wrong chart, not-told: A')), ['A']);
  });

  it('is open again where the words of an addendum say so', () => {
    for (const text of [
      'result of specimen A was marked told by mistake',
      'Specimen A erroneously recorded as told on 3/10',
      'Told entry for specimen A was entered in error',
      'The patient was not told of the result, specimen A',
    ])
      assert.deepEqual(open('2026-03-10', added(`text: "${text}"`)), ['A'], text);
    assert.deepEqual(open('2026-03-10', added('text: results were marked told in error')), ['A', 'B']);
  });

  it('stays told where an addendum says something else', () => {
    for (const text of [
      'patient was not told to stop apixaban',
      'site A recorded wrongly as left',
      'told of the result again',
    ])
      assert.deepEqual(open('2026-03-10', added(`text: "${text}"`)), [], text);
  });

  it('is told again by what comes after the addendum', () => {
    const back = added('text: wrong chart, not-told: A');
    assert.deepEqual(open('[2026-03-10, 2026-03-13]', back), []);
    assert.deepEqual(open('[2026-03-10, 2026-03-12]', back), []);
    assert.deepEqual(open('2026-03-12', back), ['A']);
  });

  it('is named in the summary as what it was', () => {
    const { value } = readNote(note('2026-03-10', added('text: wrong chart, not-told: A')));
    assert.ok(value !== null);
    const [first, second] = nextOf(value, referenceTables);
    assert.match(
      first ?? '',
      /marked told 2026-03-10 by mistake, as added 2026-03-12 09:00; patient not told yet/,
    );
    assert.match(second ?? '', /patient told 2026-03-10/);
  });

  it('is reported when it is late, and so is a label that nothing has', () => {
    const today = '2026-04-20';
    flags(
      'follow-up/not-told',
      note('2026-03-10', added('text: wrong chart, not-told: A')).replace(
        'received: 2026-03-09',
        'received: ⟦2026-03-09⟧',
      ),
      { today },
    );
    silent('follow-up/not-told', note('2026-03-10', ''), { today });
    flags('specimen/no-such-label', note('2026-03-10', added('text: wrong chart, not-told: ⟦C⟧')), { today });
    silent('specimen/no-such-label', note('2026-03-10', added('text: wrong chart, not-told: A')), { today });
  });
});
