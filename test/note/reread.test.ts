import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { applyEdits } from '../../src/note/tree/edit.ts';
import type { TextEdit } from '../../src/note/tree/finding.ts';
import { readNote } from '../../src/note/read.ts';
import { reread } from '../../src/note/reread.ts';
import type { Node, TextNode } from '../../src/note/tree/tree.ts';
import { some, times } from '../share.ts';

const notes = ['samples', 'test/fixtures'].flatMap((folder) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.wheal.yaml'))
    .map((name) => readFileSync(join(folder, name), 'utf8')),
);

function textsOf(node: Node | null): readonly TextNode[] {
  if (node === null) return [];
  if (node.kind === 'text') return [node];
  return node.kind === 'list'
    ? node.items.flatMap(textsOf)
    : node.entries.flatMap(({ value }) => textsOf(value));
}

/** Fails where a note is read in another way after an edit than from its text. */
function agrees(text: string, edit: TextEdit): void {
  const after = applyEdits(text, [edit]);
  assert.deepEqual(reread(readNote(text), edit), readNote(after), JSON.stringify(after));
}

const written = [
  ...[
    '??',
    '3.5 mL',
    '2026-03-02',
    '2026-03-02 10:05',
    '1:100,000',
    'none',
    'no',
    '1%',
    '10 mg/mL',
    'a',
    '9',
  ],
  ...[
    '',
    ' ',
    'a ',
    ' a',
    '?',
    '-',
    '- a',
    'a: b',
    'a:b',
    'a #b',
    '#',
    '"a"',
    '"',
    "'",
    '{',
    ']',
    '|',
    '&a',
    '*a',
  ],
  ...[
    'a\nb: c',
    '[a, b]',
    'a, b',
    '1,5 mL',
    '.5 mL',
    '~',
    'null',
    'é',
    '%',
    '@',
    '!a',
    'x:1',
    '1:x',
    '\t',
    '2',
  ],
];

describe('a note with another value', () => {
  it('is the one that its text is read as', () => {
    const edits = fc.record({
      note: fc.constantFrom(...notes),
      value: fc.nat(),
      from: fc.nat(),
      length: fc.nat(),
      whole: fc.boolean(),
      text: fc.oneof(fc.constantFrom(...written), fc.string({ maxLength: 4 })),
    });
    fc.assert(
      fc.property(edits, ({ note, value, from, length, whole, text }) => {
        const values = textsOf(readNote(note).root);
        const { start, end } = values[value % values.length]!;
        const first = start + (from % (end - start + 1));
        const edit = { start: first, end: first + (length % (end - first + 1)), text };
        agrees(note, whole ? { start, end, text } : edit);
      }),
      { numRuns: times(400) },
    );
  });

  it('is that also between brackets and quotes, behind a byte order mark, and with other line breaks', () => {
    const texts = [
      'wheal: 1\npatient: {id: "0042", weight: 62 kg} # in flow\nprocedures: [{site: nose, method: \'punch\'}]\n',
      '\uFEFFwheal: 1\r\nvisit: 2026-03-02\r\nprocedures:\r\n  - site: nose # where\r\n    method: punch\r\n',
      'wheal: 1\nprocedures:\n  - lesion: first row\n      second row\n    question: "a \\" b"\n    site: nose\n',
      'wheal: 1\nvisit: 2026-03-02\nvolume: 1,5 mL\nprocedures:\n  - {site: nose, volume: 1,5 mL}\n',
    ];
    const edits = texts.flatMap((note) =>
      textsOf(readNote(note).root).flatMap(({ start, end }) =>
        written.flatMap((text) => [
          { note, edit: { start, end, text } },
          ...(end - start > 2 ? [{ note, edit: { start: start + 1, end: end - 1, text } }] : []),
        ]),
      ),
    );
    for (const { note, edit } of some(edits)) agrees(note, edit);
  });

  it('is refused where its edit lies outside of the text', () => {
    assert.throws(() => reread(readNote('wheal: 1\n'), { start: 5, end: 50, text: '' }), RangeError);
  });
});
