import assert from 'node:assert/strict';
import type { Procedure } from '../../src/note/generated/types.ts';
import { readNote } from '../../src/note/read.ts';
import { reread } from '../../src/note/reread.ts';
import { signatureEdit } from '../../src/note/signature/sign.ts';
import { verify } from '../../src/note/signature/verify.ts';
import { applyEdits } from '../../src/note/tree/edit.ts';

const note = (...procedures: readonly string[]): string => `visit: 2026-03-02
patient: {id: C-1}
for-all:
  prep: chlorhexidine
  instrument: no. 15 blade
  dressing: [petrolatum, bandage]
  specimen: {medium: formalin, tests: [H&E], laboratory: Hill}
procedures:
${procedures.map((one) => `  - ${one}\n`).join('')}`;

const procedureOf = (procedure: string): Procedure => {
  const [one] = readNote(note(procedure)).value?.procedures ?? [];
  assert.ok(one !== undefined);
  return one;
};

/** What a procedure and its specimens say of the keys that may be under `for-all`. */
const saidBy = (procedure: string): object => {
  const { preparation, instrument, dressing, specimen = [] } = procedureOf(procedure);
  return {
    preparation: preparation?.map(({ value }) => value),
    instrument: instrument?.value,
    dressing: dressing?.map(({ value }) => value),
    specimen: specimen.map(({ label, medium, tests, laboratory }) =>
      [label, medium, ...(tests ?? []), laboratory].map((leaf) => leaf?.value ?? '-').join(' '),
    ),
  };
};

const all = {
  preparation: ['chlorhexidine'],
  instrument: 'no. 15 blade',
  dressing: ['petrolatum', 'bandage'],
  specimen: ['A formalin H&E Hill'],
};

describe('for-all', () => {
  it('holds for a procedure that took tissue, whatever the word for its method', () => {
    for (const method of ['shave', 'punch', 'saucerization', 'ellipse', 'curetage', 'flensing'])
      assert.deepEqual(saidBy(`{site: left ear, method: ${method}, specimen: {label: A}}`), all, method);
  });

  it('gives way to a value of the procedure or of its specimen, also to one that is not yet known', () => {
    assert.deepEqual(
      saidBy(
        '{method: punch, preparation: none, dressing: [gauze], specimen: [{label: A, medium: saline}, {label: B, tests: DIF, laboratory: ??}]}',
      ),
      {
        preparation: ['none'],
        instrument: 'no. 15 blade',
        dressing: ['gauze'],
        specimen: ['A saline H&E Hill', 'B formalin DIF -'],
      },
    );
    assert.deepEqual(procedureOf('{method: punch, dressing: ??}').dressing?.[0]?.pending, true);
  });

  it('holds for nothing that took no tissue or was not done, and for no specimen that was not sent', () => {
    const none = { preparation: undefined, instrument: undefined, dressing: undefined, specimen: [] };
    for (const method of ['cryotherapy', 'intralesional injection', 'not done', 'deferred to next visit'])
      assert.deepEqual(saidBy(`{site: left ear, method: ${method}}`), none, method);
    assert.deepEqual(saidBy('{site: left ear, remarks: wants to think about it}'), none);
    assert.deepEqual(saidBy('{method: punch, specimen: {not-sent: skin tag}}'), {
      ...all,
      specimen: ['- - -'],
    });
  });

  it('makes no specimen where none is written', () => {
    assert.equal(procedureOf('{method: punch}').specimen, undefined);
    assert.equal(procedureOf('{method: punch}').keys.has('specimen'), false);
  });

  it('keeps the place of what was taken over', () => {
    const text = note('{method: punch, specimen: {label: A}}');
    const [one] = readNote(text).value?.procedures ?? [];
    const at = one?.specimen?.[0]?.medium;
    assert.equal(text.slice(at?.start, at?.end), 'formalin');
    const key = one?.keys.get('preparation');
    assert.equal(text.slice(key?.start, key?.end), 'prep');
  });

  it('is read again after an edit as it is read at first', () => {
    const text = note('{method: punch, specimen: {label: A}}');
    const start = text.indexOf('formalin');
    const edit = { start, end: start + 'formalin'.length, text: 'saline' };
    assert.deepEqual(reread(readNote(text), edit).value, readNote(applyEdits(text, [edit])).value);
  });

  it('is covered by the signature, the laboratory too', () => {
    const text = note('{method: punch, specimen: {label: A}}');
    const signing = signatureEdit(readNote(text), 'K.O.', '2026-03-02 16:40');
    assert.ok(typeof signing === 'object');
    const signed = applyEdits(text, [signing]);
    for (const word of ['chlorhexidine', 'bandage', 'formalin', 'Hill']) {
      const verified = verify(readNote(signed.replace(word, 'other')));
      assert.ok(verified.kind === 'signed');
      assert.deepEqual(
        verified.changes.map(({ part, what }) => `${part} ${what}`),
        ['for-all changed'],
        word,
      );
    }
  });
});
