import assert from 'node:assert/strict';
import { factsOf, openIn } from '../../src/followup/caseload.ts';
import { wayOf, type Way } from '../../src/followup/telling.ts';
import { readNote } from '../../src/note/read.ts';
import { referenceTables as tables } from '../../src/practice/tables.ts';

describe('words on telling', () => {
  const means = (way: Way, texts: readonly string[]): void => {
    for (const text of texts) assert.equal(wayOf(text, tables), way, text);
  };
  it('are read clause by clause', () => {
    means('told', [
      'voicemail, patient called back and was told',
      'no answer twice; reached on the third day, results discussed',
      'visit',
      'video visit',
    ]);
    means('attempt', [
      'telephone, no answer',
      'left message to call back',
      'portal message not opened',
      'did not reach her',
      'patient not informed',
    ]);
  });
  it('tell the patient from another person', () => {
    means('other-person', ["spoke with the patient's wife", 'message left with roommate', 'told daughter']);
    means('told', ['spoke with patient and wife', 'mother informed', 'wife told; patient aware']);
  });
  it('leave open what does not say that it was heard', () => {
    means('unclear', ['letter', 'will discuss at the visit', 'per usual', 'portal message sent']);
  });
});

describe('attempts', () => {
  const item = (result: string): string | undefined => {
    const note = `visit: 2026-03-02\nprocedures:\n  - specimen: {label: A, sent: 2026-03-02, results: {received: 2026-03-09, diagnosis: nevus, ${result}}}\n`;
    return openIn('a', factsOf(readNote(note), tables), '2026-03-20').find(({ group }) => group === 'tell')
      ?.what;
  };
  const tries = (count: number): string =>
    `attempts: [${Array.from({ length: count }, (_, at) => `{on: 2026-03-1${at}, how: telephone, outcome: voicemail}`).join(', ')}]`;
  it('are shown in the open list, and after three a letter is proposed', () => {
    assert.equal(item(tries(1)), 'tried once, last on 2026-03-10');
    assert.equal(item(tries(3)), 'tried 3 times, last on 2026-03-12; send a letter');
  });
  it('count together with what is no telling under `told`', () => {
    assert.equal(
      item(`told: {on: 2026-03-09, how: voicemail}, ${tries(1)}`),
      'tried 2 times, last on 2026-03-10',
    );
  });
  it('end where the outcome says that the patient heard it', () => {
    assert.equal(
      item(
        'attempts: {on: 2026-03-10, how: telephone, outcome: "voicemail, patient called back and was told"}',
      ),
      undefined,
    );
  });
  it('with nothing in them are none', () => {
    assert.equal(item('attempts: {on: ??}'), undefined);
  });
});
