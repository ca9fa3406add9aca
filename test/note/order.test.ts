import assert from 'node:assert/strict';
import fc from 'fast-check';
import { readNote } from '../../src/note/read.ts';
import type { Entry, Node } from '../../src/note/tree/tree.ts';
import { dangers } from '../campaign/notes.ts';
import { Random } from '../campaign/random.ts';
import { judge } from '../checks/tester.ts';
import { samples } from '../service/notes.ts';
import { times } from '../share.ts';

const roots = [...samples.map(({ text }) => text), ...dangers.map(({ text }) => text)].flatMap((text) => {
  const { root, sound } = readNote(text);
  return root === null || !sound ? [] : [root];
});

type Order = (entries: readonly Entry[]) => readonly Entry[];

/** A note written between brackets, the keys of each map in an order. */
function written(node: Node | null, order: Order): string {
  if (node === null) return '""';
  if (node.kind === 'text') return JSON.stringify(node.text);
  if (node.kind === 'list') return `[${node.items.map((item) => written(item, order)).join(', ')}]`;
  return `{${order(node.entries)
    .map(({ key, value }) => `${JSON.stringify(key)}: ${written(value, order)}`)
    .join(', ')}}`;
}

/** Codes and severities of a note, and its dose. */
function meaningOf(text: string): string {
  const { findings, dose } = judge(text);
  const codes = findings.map(({ code, severity, form }) => `${code} ${form} ${severity}`).sort();
  const given = dose === null ? [] : [dose, ...dose.later].map((day) => day.given.map(({ mg }) => mg).sort());
  return JSON.stringify([codes, dose?.judged, dose?.fraction?.toFixed(9), given]);
}

const asTyped: Order = (entries) => entries;

describe('the order of keys', function () {
  this.timeout(120_000);

  it('changes no finding and no dose', () => {
    assert.ok(roots.length > 100);
    fc.assert(
      fc.property(fc.constantFrom(...roots), fc.nat(), (root, seed) => {
        const random = new Random(seed);
        const mixed = written(root, (entries) => random.mixed(entries));
        assert.equal(meaningOf(mixed), meaningOf(written(root, asTyped)), mixed);
      }),
      { numRuns: times(400) },
    );
  });

  it('changes none where a key is there twice, whichever is first', () => {
    fc.assert(
      fc.property(fc.constantFrom(...roots), fc.nat(), (root, seed) => {
        const random = new Random(seed);
        const maps = mapsIn(root).filter(({ length }) => length > 0);
        const twice = random.of(maps);
        const one = random.of(twice);
        const other = { ...one, value: random.of(maps.flat().filter(({ key }) => key === one.key)).value };
        const first: Order = (entries) => (entries === twice ? [other, ...entries] : entries);
        const last: Order = (entries) => (entries === twice ? [...entries, other] : entries);
        const [a, b] = [written(root, first), written(root, last)];
        assert.equal(meaningOf(a), meaningOf(b), `${a}\n${b}`);
      }),
      { numRuns: times(400) },
    );
  });
});

/** The entries of every map below a node. */
function mapsIn(node: Node | null): (readonly Entry[])[] {
  if (node === null || node.kind === 'text') return [];
  if (node.kind === 'list') return node.items.flatMap(mapsIn);
  return [node.entries, ...node.entries.flatMap(({ value }) => mapsIn(value))];
}
