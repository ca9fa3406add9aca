import assert from 'node:assert/strict';
import { signatureEdit } from '../../../src/note/signature/sign.ts';
import { readNote } from '../../../src/note/read.ts';
import { applyEdits } from '../../../src/note/tree/edit.ts';
import { olderEdit } from '../../note/signature/older.ts';
import { flags, silent } from '../tester.ts';

const code = 'record/changed-after-signing';
const note = `wheal: 1
visit: 2026-03-02
patient: {id: C-1, born: 1961-08-09, weight: 62 kg}
consent: written
procedures:
  - site: left upper back
    method: shave
    specimen: {label: A, medium: formalin}
`;
const edit = signatureEdit(readNote(note), 'K.O.', '2026-03-02 16:40');
assert.ok(typeof edit !== 'string');
const signed = applyEdits(note, [edit]);
const older = applyEdits(note, [olderEdit(note, 'K.O.', '2026-03-02 16:40')]);

const replaced = (text: string, from: string, to: string): string => {
  assert.ok(text.includes(from), from);
  return text.replace(from, to);
};

describe('record/changed-after-signing', () => {
  it('flags what was changed, added and taken out, at its place', () => {
    flags(code, replaced(signed, 'consent: written', '⟦consent⟧: verbal'), { severity: 'error' });
    flags(
      code,
      replaced(
        signed,
        '- site: left upper back\n    method: shave',
        '- ⟦site⟧: left upper back\n    method: punch',
      ),
    );
    flags(code, replaced(signed, 'consent: written', 'consent: written\n⟦scribe⟧: T.L.'));
    const [gone] = flags(
      code,
      replaced(replaced(signed, 'consent: written\n', ''), '    consent:', '    ⟦consent⟧:'),
    );
    assert.equal(gone?.form, 'removed');
  });

  it('flags a part taken out together with its digest', () => {
    const less = replaced(signed, 'consent: written\n', '').replace(/^ {4}consent: .*\n/m, '');
    flags(code, replaced(less, '\nsigned:', '\n⟦signed⟧:'), { severity: 'error' });
  });

  it('flags text that is not read, and what comes later without an author', () => {
    flags(
      code,
      replaced(signed, 'signed:', 'addenda: [{at: 2026-03-04, by: K.O., text: more, ⟦seen⟧: yes}]\nsigned:'),
    );
    flags(code, replaced(signed, 'signed:', 'accepted: [⟦{check: dose/near-limit, reason: seen}⟧]\nsigned:'));
  });

  it('flags a note that was signed in the older way as information', () => {
    flags(code, replaced(older, 'consent: written', '⟦consent⟧: verbal'), { severity: 'information' });
    silent(code, older);
  });

  it('passes what comes later, comments, and notes that are not signed or signed by hand', () => {
    silent(code, signed);
    silent(code, replaced(signed, 'signed:', '# seen\nevents: [{on: 2026-03-03, kind: call}]\nsigned:'));
    silent(
      code,
      replaced(
        signed,
        'medium: formalin',
        'medium: formalin, sent: 2026-03-03, laboratory: Hill, requisition: 12',
      ),
    );
    silent(
      code,
      replaced(
        signed,
        '    method: shave',
        '    method: shave\n    sutures-due: 2026-03-12\n    sutures-out: 2026-03-12',
      ),
    );
    silent(
      code,
      replaced(signed, 'signed:', 'accepted: [{check: x/y, reason: seen, by: ??, on: ??}]\nsigned:'),
    );
    silent(code, note);
    silent(code, `${note}signed: {by: K.O., at: 2026-03-02 16:40}\n`);
  });
});
