import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { canonical } from '../../../src/documents/signature/canonical.ts';
import { sha256 } from '../../../src/documents/signature/digests.ts';
import { signatureEdit } from '../../../src/documents/signature/sign.ts';
import { verify, type Verification } from '../../../src/documents/signature/verify.ts';
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

async function signed(text: string, by = 'K.O.'): Promise<string> {
  const edit = await signatureEdit(readNote(text), by, at);
  assert.ok(typeof edit !== 'string', 'it was not signed');
  return applyEdits(text, [edit]);
}

async function changes(text: string): Promise<readonly string[]> {
  const found: Verification = await verify(readNote(text));
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

describe('digest', () => {
  // FIPS 180-2, appendix B.1.
  it('is SHA-256', async () => {
    assert.equal(await sha256('abc'), 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
    const text = 'Müller – ½ mL';
    assert.equal(await sha256(text), createHash('sha256').update(text).digest('hex'));
  });
});

describe('signature', () => {
  it('stands until something that it covers is changed', async () => {
    const text = await signed(note);
    assert.deepEqual(await changes(text), []);
    assert.deepEqual(await changes(replaced(text, '62 kg', '82 kg')), ['patient changed']);
    assert.deepEqual(await changes(replaced(text, 'size: 4 mm', 'size: 6 mm')), ['procedure 1 changed']);
    assert.deepEqual(await changes(replaced(text, 'consent: written\n', '')), ['consent removed']);
    assert.deepEqual(await changes(replaced(text, 'consent: written', 'consent: written\nclinician: K.O.')), [
      'clinician added',
    ]);
    assert.deepEqual(
      await changes(replaced(text, '    method: shave\n', '    method: shave\n  - site: chin\n')),
      ['procedure 3 added', 'accepted 1 changed'],
    );
    assert.deepEqual(await changes(replaced(text, '  by: "K.O."', '  by: "M.R."')), ['signature changed']);
  });

  it('does not mind how the note is written', async () => {
    const text = await signed(note);
    const other = replaced(
      replaced(
        replaced(text, ' # where', ''),
        '{id: C-1, born: 1961-08-09, weight: 62 kg}',
        '\n  weight: "62 kg"\n  id: C-1\n  born: 1961-08-09',
      ),
      'consent: written\n',
      '',
    ).replace('wheal: 1\n', 'consent: written\nwheal: 1\n');
    assert.deepEqual(await changes(other), []);
  });

  it('leaves room for what comes later', async () => {
    const text = await signed(note);
    const later = replaced(
      replaced(
        replaced(
          text,
          'sent: 2026-03-02}',
          'sent: 2026-03-02, results: [{received: 2026-03-09, diagnosis: nevus}]}',
        ),
        '    closure: {',
        '    sutures-out: 2026-03-14\n    accepted: [{check: site/repeated, reason: seen, by: K.O.}]\n    closure: {',
      ),
      'consent: written\n',
      'consent: written\nevents: [{on: 2026-03-03, kind: call}]\naddenda: [{at: 2026-03-04, by: K.O., text: more}]\naccepted: [{check: x/y, reason: z}]\n',
    );
    assert.deepEqual(await changes(later), []);
    assert.deepEqual(
      await changes(replaced(text, 'sent: 2026-03-02}', 'sent: 2026-03-02, result: {received: 2026-03-09}}')),
      [],
    );
  });

  it('notices that what was accepted at signing is another', async () => {
    const text = await signed(note);
    assert.deepEqual(await changes(replaced(text, 'reason: not needed', 'reason: forgot')), [
      'accepted 1 changed',
    ]);
  });

  it('can be put under every sample, and holds', async () => {
    const folder = join(import.meta.dirname, '..', '..', '..', 'samples');
    for (const name of readdirSync(folder).filter((one) => !one.startsWith('practice'))) {
      const text = readFileSync(join(folder, name), 'utf8');
      assert.deepEqual(await changes(await signed(text)), [], name);
    }
  });

  it('is refused where the note cannot be read or is signed, and without a name', async () => {
    const refusal = async (text: string, by = 'K.O.'): Promise<unknown> =>
      signatureEdit(readNote(text), by, at);
    assert.equal(await refusal('- a\n- b\n'), 'unreadable');
    assert.equal(await refusal(`${note}  - site: [left\n`), 'unreadable');
    assert.equal(await refusal('{visit: 2026-03-02, patient: {id: C-1}}\n'), 'unreadable');
    assert.equal(await refusal(`${note}...\n`), 'unreadable');
    assert.equal(await refusal(await signed(note)), 'signed already');
    assert.equal(await refusal(note, ' '), 'no name');
  });

  it('keeps line ends, and takes any name', async () => {
    const windows = await signed(note.replace(/\n/g, '\r\n').trimEnd());
    assert.doesNotMatch(windows, /[^\r]\n/);
    assert.deepEqual(await changes(windows), []);
    for (const by of ['O\'Neill "Bo"', 'a: b # c', '?? ', 'Ünal'])
      assert.deepEqual(await changes(await signed(note, by)), [], by);
  });

  it('says where there is nothing to compare', async () => {
    assert.deepEqual(await verify(readNote(note)), { kind: 'unsigned' });
    const found = await verify(readNote(`${note}signed: {by: K.O., at: 2026-03-02}\n`));
    assert.equal(found.kind, 'no digests');
  });
});
