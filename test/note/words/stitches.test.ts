import assert from 'node:assert/strict';
import { readNote } from '../../../src/note/read.ts';
import { readStitches } from '../../../src/note/words/stitches.ts';

const read = (text: string): readonly Record<string, string>[] | undefined =>
  readStitches(text)?.map((fields) =>
    Object.fromEntries(fields.map(({ key, from, to, says }) => [key, says ?? text.slice(from, to)])),
  );

describe('sutures in one line', () => {
  for (const [text, sutures] of [
    ['4-0 nylon x2', [{ size: '4-0', count: '2', material: 'nylon' }]],
    [
      'closed with two simple interrupted sutures of 4-0 nylon',
      [{ count: '2', technique: 'simple interrupted', size: '4-0', material: 'nylon' }],
    ],
    [
      '3 deep stitches of 4-0 polyglactin and 5-0 nylon in the skin, x4',
      [
        { count: '3', layer: 'deep', size: '4-0', material: 'polyglactin' },
        { size: '5-0', material: 'nylon', layer: 'skin', count: '4' },
      ],
    ],
    ['4-0 polyglactin 910 x2', [{ size: '4-0', material: 'polyglactin 910', count: '2' }]],
    ['running nylon sutures', [{ technique: 'running', material: 'nylon' }]],
    // A material that is not known is reported as that.
    ['4-0 mystery x2', [{ size: '4-0', material: 'mystery', count: '2' }]],
    // What says two things of one suture, or more than its words, is left as it is typed.
    ['4-0 nylon x2 x3', undefined],
    ['4-0 nylon, see the operative note for more', undefined],
    ['no 4-0 nylon', undefined],
    ['sutures', undefined],
    ['second intention', undefined],
    ['', undefined],
  ] as const)
    it(text === '' ? 'nothing' : text, () => {
      assert.deepEqual(read(text), sutures);
    });

  it('are the closure of a note, each word where it is typed', () => {
    const text =
      'visit: 2026-03-02\nprocedures:\n  - site: chin\n    closure: two deep 5-0 polyglactin, 6-0 nylon x3\n';
    const closure = readNote(text).value?.procedures?.[0]?.closure ?? [];
    assert.deepEqual(
      closure.map(({ material, size, count, layer }) => [
        material?.value,
        size?.text,
        count?.value,
        layer?.value,
      ]),
      [
        ['polyglactin', '5-0', 2, 'deep'],
        ['nylon', '6-0', 3, undefined],
      ],
    );
    for (const { material } of closure)
      assert.equal(text.slice(material!.start, material!.end), material!.value);
  });
});
