import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { olderEdit } from './older.ts';
import { keyOf } from '../../../src/note/signature/canonical.ts';
import { signatureEdit } from '../../../src/note/signature/sign.ts';
import { verify } from '../../../src/note/signature/verify.ts';
import { readNote } from '../../../src/note/read.ts';
import { applyEdits } from '../../../src/note/tree/edit.ts';
import { some } from '../../share.ts';
import type { Entry, MapNode, Node } from '../../../src/note/tree/tree.ts';

const folder = join(import.meta.dirname, '..', '..', '..', 'samples');

const signed = (text: string): string | undefined => {
  const edit = signatureEdit(readNote(text), 'K.O.', '2026-03-02 16:40');
  return typeof edit === 'string' ? undefined : applyEdits(text, [edit]);
};

/** Every sample that can be signed, signed. */
const samples = readdirSync(folder)
  .filter((name) => name.endsWith('.wheal.yaml') && name !== 'practice.wheal.yaml')
  .flatMap((name) => {
    const text = signed(readFileSync(join(folder, name), 'utf8'));
    return text === undefined ? [] : [{ name, text }];
  });

const isUnchanged = (text: string): boolean => {
  const found = verify(readNote(text));
  return found.kind === 'signed' && found.changes.length === 0;
};

/** Each value that was signed, wherever it is. */
function* signedValues(node: Node | null, shape: string | undefined): Generator<Node> {
  if (node === null) return;
  if (node.kind === 'text') yield node;
  else if (node.kind === 'list') for (const item of node.items) yield* signedValues(item, shape);
  else yield* valuesOf(node, shape);
}

function* valuesOf(node: MapNode, shape: string | undefined): Generator<Node> {
  for (const { key, value } of node.entries) {
    const known = keyOf(key, shape);
    if (known?.unsigned !== true || key === 'accepted') yield* signedValues(value, known?.map);
  }
}

const roots = new Map<string, readonly Entry[]>();

/** The top-level keys of a text, read once. */
function rootOf(text: string): readonly Entry[] {
  const root = roots.get(text) ?? readNote(text).root?.entries ?? [];
  roots.set(text, root);
  return root;
}

/** A text without the lines of a top-level key. */
function without(text: string, key: string): string {
  const entries = rootOf(text);
  const at = entries.findIndex((one) => one.key === key);
  return text.slice(0, entries[at]!.start) + text.slice(entries[at + 1]?.start ?? text.length);
}

interface Tampering {
  readonly what: string;
  readonly text: string;
}

function* valuesChanged(text: string): Generator<Tampering> {
  const root = readNote(text).root;
  for (const { start, end } of signedValues(root, 'note'))
    if (end > start)
      yield { what: `value at ${start}`, text: `${text.slice(0, start)}"other"${text.slice(end)}` };
}

function* partsTakenOut(text: string): Generator<Tampering> {
  for (const { key } of rootOf(text).filter((entry) => entry.key !== 'signed' && entry.key !== 'events')) {
    const less = without(text, key);
    yield { what: `${key} taken out`, text: less };
    const digests =
      key === 'procedures' ? /^ {4}(procedure|accepted) \d+: .*\n/gm : new RegExp(`^ {4}${key}: .*\n`, 'gm');
    yield { what: `${key} and its digest taken out`, text: less.replace(digests, '') };
  }
}

function* signatureChanged(text: string): Generator<Tampering> {
  const at = text.indexOf('signed:\n');
  const block = text.slice(at);
  const other = (what: string, from: RegExp | string, to: string): Tampering => ({
    what: `signature: ${what}`,
    text: text.slice(0, at) + block.replace(from, to),
  });
  yield other('other name', 'K.O.', 'M.R.');
  yield other('other time', '16:40', '16:41');
  yield other('no format', /^ {2}format: 2\n/m, '');
  yield other('older format', 'format: 2', 'format: 1');
  yield other('newer format', 'format: 2', 'format: 3');
  yield other('format with words', 'format: 2', 'format: 2 or so');
  yield other('no digests', / {2}digests:[^]*/, '');
  yield other('no digest of the signature', /^ {4}signature: .*\n/m, '');
  yield other('a digest more', '  digests:\n', '  digests:\n    other: abc\n');
  yield other('an unknown key', '  format: 2\n', '  format: 2\n  for: somebody\n');
  for (const [line, name] of block.matchAll(/^ {4}([\w -]+): .*\n/gm)) {
    yield other(`digest of ${name} taken out`, line, '');
    yield other(`digest of ${name} is a list`, line, `    ${name}: [a]\n`);
  }
  yield { what: 'signed twice', text: `${text}${block}` };
  yield { what: 'signed in words after it', text: `${text}signed: {by: M.R., at: 2026-03-03}\n` };
  yield { what: 'the signature in a second document', text: `${text.slice(0, at)}---\n${block}` };
  yield { what: 'the signature further in', text: text.slice(0, at) + block.replace(/^/gm, '    ') };
}

function* textAdded(text: string): Generator<Tampering> {
  const at = text.indexOf('signed:\n');
  const into = (what: string, more: string): Tampering => ({
    what,
    text: text.slice(0, at) + more + text.slice(at),
  });
  yield into('an unknown key', 'remark: seen by K.O.\n');
  yield into('a misspelt key', 'clinicain: M.R.\n');
  yield into('a known key', 'assistant: M.R.\n');
  yield into('a merge key', '<<: {consent: verbal}\n');
  yield into('words without a colon', 'seen by K.O.\n');
  yield into('an open bracket', 'assistant: [M.R.\n');
  yield into('an open quote', 'assistant: "M.R.\n');
  yield into('an anchor', 'assistant: &who M.R.\n');
  yield into('a procedure', '  - site: chin\n    method: shave\n');
  yield into('an addendum of nobody', 'addenda: [{at: 2026-03-04, text: more}]\n');
  yield into('an addendum without a time', 'addenda: [{by: K.O., text: more}]\n');
  yield into(
    'an addendum with an unknown key',
    'addenda: [{by: K.O., at: 2026-03-04, text: more, size: 4 mm}]\n',
  );
  yield into('a bare addendum', 'addenda: more\n');
  yield into('accepted by nobody', 'accepted: [{check: dose/near-limit, reason: seen, on: 2026-03-04}]\n');
  yield into('accepted at no time', 'accepted: [{check: dose/near-limit, reason: seen, by: K.O.}]\n');
  yield { what: 'a second document', text: `${text}---\nvisit: 2026-03-03\n` };
  yield { what: 'text after the end', text: `${text}...\nvisit: 2026-03-03\n` };
  yield { what: 'a directive', text: `%YAML 1.1\n---\n${text}` };
  yield { what: 'a tab', text: `${text}\tmore: 1\n` };
}

const makers = { valuesChanged, partsTakenOut, signatureChanged, textAdded };

describe('a signature against tampering', () => {
  it('is tried on most of the samples', () => {
    assert.ok(samples.length >= 12, `${samples.length} samples were signed`);
    for (const { name, text } of samples) assert.ok(isUnchanged(text), name);
  });

  let made = 0;
  for (const [kind, make] of Object.entries(makers))
    it(`shows ${kind}`, () => {
      const all = samples.flatMap(({ name, text }) =>
        [...make(text)]
          .filter((one) => one.text !== text)
          .map((one) => ({ what: `${name}: ${one.what}`, text: one.text })),
      );
      made += all.length;
      for (const { what, text } of some(all)) assert.ok(!isUnchanged(text), `${what}\n${text}`);
    });

  it('shows procedures in another order', () => {
    for (const { name, text } of samples) {
      const procedures = rootOf(text).find(({ key }) => key === 'procedures')?.value;
      if (procedures?.kind !== 'list' || procedures.flow || procedures.items.length < 2) continue;
      const [first, second] = [procedures.items[0]!, procedures.items[1]!];
      const one = text.slice(first.start, first.end);
      const two = text.slice(second.start, second.end);
      if (one === two) continue;
      const swapped =
        text.slice(0, first.start) + two + text.slice(first.end, second.start) + one + text.slice(second.end);
      assert.ok(!isUnchanged(swapped), name);
    }
  });

  it('is tried at least a thousand times', () => {
    assert.ok(made >= 1000, `${made} tamperings`);
  });

  it('leaves comments, and the order of keys, as they may be', () => {
    for (const { name, text } of samples) {
      assert.ok(isUnchanged(`# seen\n${text.replaceAll('\n', '\n# seen\n')}`), `${name}: comments`);
      const consent = rootOf(text).find(({ key }) => key === 'consent');
      if (consent === undefined) continue;
      const at = text.indexOf('signed:\n');
      const line = `${text.slice(consent.start, text.indexOf('\n', consent.start))}\n`;
      const rest = text.slice(consent.start + line.length, at);
      const moved = text.slice(0, consent.start) + rest + line + text.slice(at);
      assert.ok(isUnchanged(moved), `${name}: order`);
    }
  });
});

describe('a note signed in the older way', () => {
  const text = readFileSync(join(folder, 'punch-sutured.wheal.yaml'), 'utf8');
  const older = applyEdits(text, [olderEdit(text, 'K.O.', '2026-03-02 16:40')]);

  it('is verified by the older rules', () => {
    const found = verify(readNote(older));
    assert.ok(found.kind === 'signed');
    assert.equal(found.format, 1);
    assert.deepEqual(found.changes, []);
  });

  it('shows a changed value, and no part taken out with its digest', () => {
    assert.ok(!isUnchanged(older.replace(/^consent: .*$/m, 'consent: other')));
    assert.ok(isUnchanged(without(older, 'consent').replace(/^ {4}consent: .*\n/m, '')));
  });
});
