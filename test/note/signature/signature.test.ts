import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { canonical } from '../../../src/note/signature/canonical.ts';
import { signatureEdit } from '../../../src/note/signature/sign.ts';
import { verify, type Verification } from '../../../src/note/signature/verify.ts';
import { applyEdits } from '../../../src/note/tree/edit.ts';
import { readNote } from '../../../src/note/read.ts';
import type { Node } from '../../../src/note/tree/tree.ts';
import { times } from '../../share.ts';

const at = '2026-03-02 16:40';
const note = `wheal: 1
visit: 2026-03-02
patient: {id: C-1, born: 1961-08-09, weight: 62 kg}
consent: written
procedures:
  - site: left upper back # where
    method: punch
    size: 4 mm
    closure: {material: nylon, count: 2}
    specimen: {label: A, medium: formalin, sent: 2026-03-02}
  - site: right upper back
    method: shave
    accepted: [{check: specimen/missing, reason: not needed, by: K.O.}]
`;

function signed(text: string, by = 'K.O.'): string {
  const edit = signatureEdit(readNote(text), by, at);
  assert.ok(typeof edit !== 'string', 'it was not signed');
  return applyEdits(text, [edit]);
}

function changes(text: string): readonly string[] {
  const found: Verification = verify(readNote(text));
  assert.ok(found.kind === 'signed');
  return found.changes.map(({ part, what }) => `${part} ${what}`);
}

const replaced = (text: string, from: string, to: string): string => {
  assert.ok(text.includes(from), from);
  return text.replace(from, to);
};

describe('canonical form', () => {
  const nodeOf = (value: unknown): Node => {
    const range = { start: 0, end: 0 };
    if (Array.isArray(value)) return { kind: 'list', flow: false, items: value.map(nodeOf), ...range };
    if (typeof value === 'object' && value !== null)
      return {
        kind: 'map',
        flow: false,
        entries: Object.entries(value).map(([key, inner]) => ({ key, value: nodeOf(inner), ...range })),
        ...range,
      };
    return { kind: 'text', text: String(value), inner: -1, ...range };
  };

  // RFC 8785 section 3.2.3: keys in the order of their UTF-16 units.
  it('sorts the keys of the published example as published', () => {
    const keys = ['\u20ac', '\r', '\ufb33', '1', '\u{1f600}', '\u0080', '\u00f6'];
    const node = nodeOf(Object.fromEntries(keys.map((key) => [key, 'x'])));
    const order = [...canonical(node).matchAll(/"((?:[^"\\]|\\.)*)":/g)].map(
      ([, key]) => JSON.parse(`"${key ?? ''}"`) as string,
    );
    assert.deepEqual(order, ['\r', '1', '\u0080', '\u00f6', '\u20ac', '\u{1f600}', '\ufb33']);
  });

  it('reads back as what it was made from, whatever that is', () => {
    const { value } = fc.letrec((tie) => ({
      value: fc.oneof(
        { depthSize: 'small' },
        fc.string({ unit: 'binary' }),
        fc.array(tie('value')),
        fc.dictionary(
          fc.string({ unit: 'binary', minLength: 1 }).filter((key) => key !== '__proto__'),
          tie('value'),
        ),
      ),
    }));
    fc.assert(
      fc.property(value, (json) => {
        assert.deepEqual(JSON.parse(canonical(nodeOf(json))), JSON.parse(JSON.stringify(json)));
      }),
      { numRuns: times(200) },
    );
  });
});

describe('signature', () => {
  it('stands until something that it covers is changed', () => {
    const text = signed(note);
    assert.deepEqual(changes(text), []);
    assert.deepEqual(changes(replaced(text, '62 kg', '82 kg')), ['patient changed']);
    assert.deepEqual(changes(replaced(text, 'size: 4 mm', 'size: 6 mm')), ['procedure 1 changed']);
    assert.deepEqual(changes(replaced(text, 'consent: written\n', '')), ['consent removed']);
    assert.deepEqual(changes(replaced(text, 'consent: written', 'consent: written\nclinician: K.O.')), [
      'clinician added',
    ]);
    assert.deepEqual(changes(replaced(text, '    method: shave\n', '    method: shave\n  - site: chin\n')), [
      'procedure 3 added',
      'accepted 1 changed',
      'an accepted finding without author and date',
    ]);
    assert.deepEqual(changes(replaced(text, '  by: "K.O."', '  by: "M.R."')), ['signature changed']);
  });

  it('does not mind how the note is written', () => {
    const text = signed(note);
    const other = replaced(
      replaced(
        replaced(text, ' # where', ''),
        '{id: C-1, born: 1961-08-09, weight: 62 kg}',
        '\n  weight: "62 kg"\n  id: C-1\n  born: 1961-08-09',
      ),
      'consent: written\n',
      '',
    ).replace('wheal: 1\n', 'consent: written\nwheal: 1\n');
    assert.deepEqual(changes(other), []);
  });

  it('leaves room for what comes later', () => {
    const text = signed(note);
    const later = replaced(
      replaced(
        replaced(
          text,
          'sent: 2026-03-02}',
          'sent: 2026-03-02, results: [{received: 2026-03-09, diagnosis: nevus}]}',
        ),
        '    closure: {',
        '    sutures-out: 2026-03-14\n    accepted: [{check: site/repeated, reason: seen, by: K.O., on: 2026-03-03}]\n    closure: {',
      ),
      'consent: written\n',
      'consent: written\nevents: [{on: 2026-03-03, kind: call}]\naddenda: [{at: 2026-03-04, by: K.O., text: more}]\naccepted: [{check: x/y, reason: z, by: K.O., on: 2026-03-03}]\n',
    );
    assert.deepEqual(changes(later), []);
    assert.deepEqual(
      changes(replaced(text, 'sent: 2026-03-02}', 'sent: 2026-03-02, result: {received: 2026-03-09}}')),
      [],
    );
  });

  it('notices that what was accepted at signing is another', () => {
    const text = signed(note);
    assert.deepEqual(changes(replaced(text, 'reason: not needed', 'reason: forgot')), [
      'accepted 1 changed',
      'an accepted finding without author and date',
    ]);
  });

  it('can be put under every sample that can be read, and holds', () => {
    const folder = join(import.meta.dirname, '..', '..', '..', 'samples');
    const refused: string[] = [];
    for (const name of readdirSync(folder).filter((one) => !one.startsWith('practice'))) {
      const text = readFileSync(join(folder, name), 'utf8');
      const isRead = readNote(text).problems.every(({ code }) => !code.startsWith('yaml/'));
      if (isRead) assert.deepEqual(changes(signed(text)), [], name);
      else refused.push(name);
    }
    assert.deepEqual(refused, ['comma-trap.wheal.yaml']);
  });

  it('is refused where the note cannot be read or is signed, and without a name', () => {
    const refusal = (text: string, by = 'K.O.'): unknown => signatureEdit(readNote(text), by, at);
    assert.equal(refusal('- a\n- b\n'), 'unreadable');
    assert.equal(refusal(`${note}  - site: [left\n`), 'unreadable');
    assert.equal(refusal('{visit: 2026-03-02, patient: {id: C-1}}\n'), 'unreadable');
    assert.equal(refusal(`${note}...\n`), 'unreadable');
    assert.equal(refusal(signed(note)), 'signed already');
    assert.equal(refusal(note, ' '), 'no name');
    assert.equal(refusal(`draft: yes\n${note}`), 'draft');
    assert.equal(refusal(`${note}---\nsigned: {digests: {}}\n`), 'signed already');
  });

  it('keeps line ends, and takes any name', () => {
    const windows = signed(note.replace(/\n/g, '\r\n').trimEnd());
    assert.doesNotMatch(windows, /[^\r]\n/);
    assert.deepEqual(changes(windows), []);
    for (const by of ['O\'Neill "Bo"', 'a: b # c', '?? ', 'Ünal'])
      assert.deepEqual(changes(signed(note, by)), [], by);
  });

  it('says where there is nothing to compare', () => {
    assert.deepEqual(verify(readNote(note)), { kind: 'unsigned' });
    const found = verify(readNote(`${note}signed: {by: K.O., at: 2026-03-02}\n`));
    assert.equal(found.kind, 'no digests');
  });
});
