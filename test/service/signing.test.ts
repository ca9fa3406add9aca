import assert from 'node:assert/strict';
import { placeOfChange } from '../../src/note/signature/place.ts';
import { signatureEdit } from '../../src/note/signature/sign.ts';
import { verify } from '../../src/note/signature/verify.ts';
import { applyEdits } from '../../src/note/tree/edit.ts';
import { readNote } from '../../src/note/read.ts';
import { beforeSigning } from '../../src/service/signing.ts';
import { analysed } from './notes.ts';

const note = `wheal: 1
visit: 2026-03-02
clinician: K.O.
patient: {id: C-1, born: 1961-08-09, weight: 62 kg, allergies: none, implants: none}
consent: written
procedures:
  - site: left upper back
    method: shave
    specimen: {label: A, medium: formalin, sent: 2026-03-02}
  - site: right upper back
    method: shave
    specimen: {label: B, medium: formalin, sent: 2026-03-02}
`;

describe('before signing', () => {
  it('tells what is not yet known, and what is found, the gravest first', () => {
    const text = note.replace('consent: written', 'consent: ??').replace('62 kg', '62 kgs of');
    const { pending, findings, rows } = beforeSigning(analysed(text));
    assert.equal(pending, 1);
    assert.ok(findings.error > 0);
    assert.equal(rows.length, 1 + findings.error + findings.warning + findings.information);
    assert.match(rows[0]!, /^line 4: /);
    assert.ok(rows.some((row) => row.startsWith('line 5: `consent` is not yet known')));
  });

  it('leaves out what was accepted, unless it is a danger', () => {
    const accepted = `${note}accepted: [{check: record/missing-aftercare, reason: given before, by: K.O.}]\n`;
    const told = (text: string): readonly string[] => beforeSigning(analysed(text)).rows;
    assert.equal(told(note).length - told(accepted).length, 1);
  });
});

describe('the place of a change after signing', () => {
  const changesIn = (from: string, to: string): readonly string[] => {
    const edit = signatureEdit(readNote(note), 'K.O.', '2026-03-02 16:40');
    assert.ok(typeof edit !== 'string');
    const signed = applyEdits(note, [edit]);
    assert.ok(signed.includes(from), from);
    const source = readNote(signed.replace(from, to));
    const found = verify(source);
    assert.ok(found.kind === 'signed');
    return found.changes.map((change) => {
      const { start } = placeOfChange(source, change);
      return `${change.part} ${change.what}: ${/^[^\r\n]*/.exec(source.text.slice(start))![0]}`;
    });
  };

  const cases: readonly (readonly [string, string, string])[] = [
    ['consent: written', 'consent: verbal', 'consent changed: consent: verbal'],
    ['label: B', 'label: C', 'procedure 2 changed: site: right upper back'],
    ['consent: written\n', '', 'consent removed: consent: '],
    ['consent: written\n', 'consent: written\nscribe: T.L.\n', 'scribe added: scribe: T.L.'],
    ['by: "K.O."', 'by: "N.B."', 'signature changed: signed:'],
  ];
  for (const [from, to, expected] of cases)
    it(`is found: ${expected}`, () => {
      const [change, ...others] = changesIn(from, to);
      assert.ok(change?.startsWith(expected), change);
      assert.deepEqual(others, []);
    });
});
