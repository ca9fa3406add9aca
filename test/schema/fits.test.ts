import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Binder } from '../../src/note/bind.ts';
import { noteIndex, readNote } from '../../src/note/read.ts';
import type { Entry, ListNode, MapNode, Node, TextNode } from '../../src/note/tree/tree.ts';
import { plainData } from '../../src/schema/data.ts';
import { step, times } from '../share.ts';
import * as validators from '../../src/schema/generated/validators.js';

const at = { start: 0, end: 0 };
const text = (typed: string): TextNode => ({ ...at, kind: 'text', text: typed, inner: 0 });
const map = (...entries: readonly Entry[]): MapNode => ({ ...at, kind: 'map', flow: true, entries });
const list = (...items: readonly Node[]): ListNode => ({ ...at, kind: 'list', flow: true, items });
const entry = (key: string, value: Node | null): Entry => ({ ...at, key, value });

/** What may come in the place of a value. */
const slips: readonly (Node | null)[] = [
  null,
  text(''),
  text('??'),
  text('word'),
  list(),
  list(text('word')),
  list(text('')),
  list(text('??')),
  list(list(text('word'))),
  list(map()),
  map(),
  map(entry('no-such-key', text('word'))),
  map(entry('constructor', text('word'))),
];

/** A tree with each of its parts left out, doubled, called otherwise, or with something else in its place. */
function* slipped(node: Node): Generator<Node> {
  if (node.kind === 'text') return;
  if (node.kind === 'list') {
    for (const [index, item] of node.items.entries()) {
      for (const slip of [...slips, ...slipped(item)])
        if (slip !== null) yield { ...node, items: node.items.with(index, slip) };
    }
    return;
  }
  for (const [index, one] of node.entries.entries()) {
    yield { ...node, entries: node.entries.toSpliced(index, 1) };
    yield { ...node, entries: [...node.entries, entry(one.key, text('word'))] };
    yield { ...node, entries: node.entries.with(index, { ...one, key: `${one.key}x` }) };
    const values = [...slips, ...(one.value === null ? [] : slipped(one.value))];
    for (const value of values) yield { ...node, entries: node.entries.with(index, { ...one, value }) };
  }
}

/** Whether binding a tree found nothing out of place. */
function fits(root: MapNode): boolean {
  const binder = new Binder(noteIndex, false);
  binder.map(root, 'note', root);
  return binder.fits;
}

/** Whether the validator has nothing to say and nothing waits. */
function valid(root: MapNode): boolean {
  const { data, problems } = plainData(root, 'note', noteIndex, new Map());
  return validators.note(data) && problems.length === 0;
}

const roots = ['samples', 'test/fixtures'].flatMap((folder) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.wheal.yaml') && !name.endsWith('practice.wheal.yaml'))
    .flatMap((name) => readNote(readFileSync(join(folder, name), 'utf8')).root ?? []),
);

describe('a note whose form is right', () => {
  it('is known as such without the validator', () => {
    const known = roots.filter(fits);
    assert.ok(known.length > roots.length * 0.8, `${known.length} of ${roots.length}`);
  });

  it('is never one that the validator refuses, or in which something waits', function () {
    this.timeout(60_000);
    let fitting = 0;
    for (const root of roots.filter((_, index) => index % step(6) === 0))
      for (const slip of [root, ...slipped(root)] as MapNode[]) {
        if (!fits(slip)) continue;
        fitting += 1;
        if (!valid(slip)) assert.fail(JSON.stringify(slip));
      }
    assert.ok(fitting > times(1000), String(fitting));
  });
});
