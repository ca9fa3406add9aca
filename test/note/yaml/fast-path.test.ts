import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { composed as composedBy, lexed } from '../../../src/note/yaml/compose.ts';
import { KeyNames } from '../../../src/note/tree/key-names.ts';
import { ordinaryTree } from '../../../src/note/yaml/fast-path.ts';
import { noteIndex } from '../../../src/note/read.ts';
import type { Node } from '../../../src/note/tree/tree.ts';
import { treeOf, type Tree } from '../../../src/note/yaml/build-tree.ts';
import { step, times } from '../../share.ts';

const keys = new KeyNames(noteIndex);

/** The tree that the composer makes of a text, with all that it finds wrong. */
function composed(text: string): { faults: readonly unknown[]; tree: Tree } {
  const found = composedBy(lexed(text), text.length);
  return { faults: [...found.faults, ...found.directives], tree: treeOf(found, text, new Map(), keys) };
}

/** Whether a text is ordinary; fails where its tree is another than the composer's, or where there was a fault. */
function agrees(text: string): boolean {
  const root = ordinaryTree(lexed(text));
  if (root === undefined) return false;
  const { faults, tree } = composed(text);
  assert.deepEqual(
    { root: root as Node, faults: [], problems: [], odd: [] },
    { root: tree.root, faults, problems: tree.problems, odd: tree.odd },
    JSON.stringify(text),
  );
  return true;
}

const notes = ['samples', 'test/fixtures'].flatMap((folder) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.wheal.yaml'))
    .map((name) => readFileSync(join(folder, name), 'utf8')),
);
const rows = notes.flatMap((text) => text.split('\n'));

describe('a text that is written as most are', () => {
  it('is read without the composer, and as the composer reads it', () => {
    for (const text of [
      'a: b',
      'a: b # why\n# more\nc: d\n',
      '# first\n\na:\n  b: c\n\n# between\nd: [e, f]\n# last',
      'a: # why\n  # inside\n  b: c\n  # in line\n  d: e\n\n',
      'a:\n- b\n- c: d\n  e: f\n- [g]\n# last\n',
      'a: {b: c, d: [e, {f: g}]} # h',
      'a: []\nb: {}\n',
      '"a": \'b\'\nc: "d e"\n',
      'a: ""\nb: c',
      'a:\r\n  - b: 1%\r\n    c: 1:100,000\r\n',
      '\uFEFFa: b\n',
      'a: b:c',
      'a:\n  - b: c\n    d:\n    - e\n  - f\ng: h',
    ])
      assert.equal(agrees(text), true, text);
  });

  it('is left to the composer where anything else stands in it', () => {
    for (const text of [
      '',
      'a',
      '- a',
      'a:',
      'a: \nb: c',
      'a: b\n  c',
      'a: "b',
      'a: "b\\n"',
      "a: 'it''s'",
      'a: |\n  b\n',
      'a: &b c',
      'a: *b',
      'a: !c d',
      'a: b\n...\n',
      '---\na: b',
      'a: b\n---\nc: d',
      '%YAML 1.1\n---\na: b',
      '? a\n: b',
      'a: b: c',
      'a: b #c',
      'a:\tb',
      'a: [b,c]',
      'a: [b c',
      'a: [b, ]',
      'a: [b,\n c]',
      'a: [b: c]',
      'a: {b}',
      'a: {b: c',
      'a: @b',
      'a: %b',
      '<<: a',
      'a: b\n c: d',
      'a:\n   b: c\n  d: e',
      'a:\n  b\n',
      'a:\n  b: c\n  # inside\nd: e',
      '- - a',
      'a:\n  -\n    b: c',
      'a:\n  - b: c\n   d: e',
      `${'a'.repeat(1100)}: b`,
    ])
      assert.equal(agrees(text), false, text);
  });

  it('is what nearly all notes are', () => {
    assert.ok(notes.filter(agrees).length > notes.length * 0.8);
  });

  it('is read the same in each state of its being typed, and with each character taken out', function () {
    this.timeout(60_000);
    const apart = step(101);
    for (const text of notes)
      for (let at = 0; at < text.length; at += apart) {
        agrees(text.slice(0, at));
        agrees(text.slice(0, at) + text.slice(at + 1));
      }
  });

  it('is read the same after any slips', () => {
    const signs = Array.from(':{}[]"\'#&*!|>%@-?,`\t\n \\<~\r');
    const slip = fc.tuple(fc.nat(), fc.constantFrom('', ...signs), fc.nat({ max: 2 }));
    const grown = fc
      .tuple(fc.array(fc.constantFrom(...rows), { maxLength: 8 }), fc.array(slip, { maxLength: 5 }))
      .map(([lines, slips]) =>
        slips.reduce((text, [place, sign, cut]) => {
          const at = place % (text.length + 1);
          return text.slice(0, at) + sign + text.slice(at + cut);
        }, lines.join('\n')),
      );
    const pieces = [
      ': ',
      '- ',
      '\n',
      '\n  ',
      '\n    ',
      'a',
      'b',
      '"',
      "'",
      '[',
      ']',
      '{',
      '}',
      ', ',
      ' #',
      '#',
      ' ',
    ];
    const built = fc
      .array(fc.constantFrom(...pieces, 'a: b', 'c:'), { maxLength: 14 })
      .map((some) => some.join(''));
    fc.assert(
      fc.property(grown, (text) => void agrees(text)),
      { numRuns: times(1500) },
    );
    fc.assert(
      fc.property(built, (text) => void agrees(text)),
      { numRuns: times(4000) },
    );
  });

  it('is read the same where any tree is written out, with empty rows and remarks between', () => {
    type Tree = string | readonly Tree[] | { readonly [key: string]: Tree };
    const word = fc.constantFrom(
      'a',
      'b c',
      '1.5 mL',
      '"d: e"',
      "'f'",
      '[g, h]',
      '{i: j, k: [l]}',
      'm # n',
      '# o',
    );
    const { tree } = fc.letrec<{ tree: Tree }>((tie) => ({
      tree: fc.oneof(
        { maxDepth: 4 },
        word,
        fc.dictionary(fc.constantFrom('p', 'q r', '"s"', 't-u'), tie('tree'), { minKeys: 1, maxKeys: 3 }),
        fc.array(tie('tree'), { minLength: 1, maxLength: 3 }),
      ),
    }));
    const between = fc.constantFrom('', '', '', '\n', '# v\n', '  # w\n', '    \n', '\t\n');
    const written = fc
      .tuple(
        fc.dictionary(fc.constantFrom('x', 'y', 'z'), tree),
        fc.integer({ min: 1, max: 3 }),
        between,
        between,
      )
      .map(([root, step, before, behind]) => {
        const gap = (depth: number): string => (depth % 2 === 0 ? before : behind);
        const write = (node: Tree, column: number): string => {
          if (typeof node === 'string') return ` ${node}\n${gap(column)}`;
          const blanks = ' '.repeat(column);
          const rows = Array.isArray(node)
            ? node.map((item: Tree) => {
                const text = write(item, column + 2);
                return `${blanks}-${typeof item === 'object' && !Array.isArray(item) ? text.slice(column + 1) : text}`;
              })
            : Object.entries(node).map(([key, value]) => `${blanks}${key}:${write(value, column + step)}`);
          return `${column === 0 ? '' : '\n'}${rows.join(gap(column))}`.replace(/^\n(?=-)/, '');
        };
        return write(root, 0);
      });
    const ordinary: boolean[] = [];
    fc.assert(
      fc.property(written, (text) => void ordinary.push(agrees(text))),
      { numRuns: times(3000) },
    );
    // About a ninth of them are: enough that the comparison is not one of the composer with itself.
    const count = ordinary.filter(Boolean).length;
    assert.ok(count > ordinary.length / (ordinary.length < 1000 ? 60 : 20), `${count} of ${ordinary.length}`);
  });
});
