import assert from 'node:assert/strict';
import { noteIndex } from '../../../src/note/read.ts';
import { cursorAt, type Cursor } from '../../../src/service/completion/cursor.ts';

/** The place of the mark `|` in a note. */
function at(marked: string): Cursor {
  const offset = marked.indexOf('|');
  return cursorAt(marked.slice(0, offset) + marked.slice(offset + 1), offset, noteIndex, 'note');
}

const place = (marked: string): string => {
  const { place: where, path, typed, column, lead, flow } = at(marked);
  return `${where} ${path.join('.') || '-'} "${typed}"${where === 'key' && !flow ? ` at ${column}${lead}` : ''}`;
};

describe('the place of the caret', () => {
  const cases: readonly (readonly [string, string, string])[] = [
    ['an empty file', '|', 'key - "" at 0'],
    ['a half-typed key', 'vis|', 'key - "vis" at 0'],
    ['a value', 'consent: wr|', 'value consent "wr"'],
    ['a value that is still missing', 'consent: |\nscribe: T', 'value consent ""'],
    [
      'a value beside a key with a list below',
      'procedures:\n  - closure: |\n      - suture\n',
      'nowhere - ""',
    ],
    ['a value beside a key with a list at its column', 'procedures: |\n- site: nose\n', 'nowhere - ""'],
    ['a value beside a key with a map below', 'patient:|\n\n  id: C-1\n', 'nowhere - ""'],
    ['a key of a map', 'patient:\n  id: C-1\n  |', 'key patient "" at 2'],
    ['a first key of a map', 'patient:\n  |', 'key patient "" at 2'],
    ['a key before others', 'patient:\n  |\n  id: C-1', 'key patient "" at 2'],
    ['maps indented by four', 'patient:\n    id: C-1\n    |', 'key patient "" at 4'],
    ['a list item right behind its dash', 'procedures:\n  - |', 'key procedures "" at 4'],
    ['a further key of a list item', 'procedures:\n  - site: nose\n    me|', 'key procedures "me" at 4'],
    ['a list without indentation', 'procedures:\n- site: nose\n  me|', 'key procedures "me" at 2'],
    ['a new item of a list', 'procedures:\n  |', 'key procedures "" at 2- '],
    ['a value in an item', 'procedures:\n  - site: nose\n    method: pu|', 'value procedures.method "pu"'],
    ['a value behind a dash', 'procedures:\n  - site: |', 'value procedures.site ""'],
    [
      'a list in an item',
      'procedures:\n  - anesthetic:\n      - agent: lido|',
      'value procedures.anesthetic.agent "lido"',
    ],
    [
      'behind a list in an item',
      'procedures:\n  - anesthetic:\n      - agent: lidocaine\n    |',
      'key procedures "" at 4',
    ],
    ['a flow map', 'patient: {id: C-1, we|}', 'key patient "we"'],
    ['a value in a flow map', 'patient: {id: C-1, weight: 6|}', 'value patient.weight "6"'],
    ['an open flow map', 'patient: {|', 'key patient ""'],
    ['a map in a list in a map', 'patient: {implants: [{kind: pa|}]}', 'value patient.implants.kind "pa"'],
    [
      'a word in a flow list',
      'procedures:\n  - hemostasis: [pressure, al|]',
      'value procedures.hemostasis "al"',
    ],
    ['a flow map over two rows', 'patient: {id: C-1,\n  we|}', 'key patient "we"'],
    ['a comment', '# vis|', 'nowhere - ""'],
    ['a comment behind a value', 'consent: written # by|', 'nowhere - ""'],
    [
      'an item of a block list of words',
      'patient:\n  allergies:\n    - ba|',
      'key patient.allergies "ba" at 6',
    ],
    [
      'an item of a block list of texts',
      'patient:\n  medications:\n    - ap|',
      'value patient.medications "ap"',
    ],
    ['an alias of a key', 'patient:\n  dob: 19|', 'value patient.born "19"'],
    ['an unknown key', 'nonsense: x|', 'nowhere nonsense "x"'],
    ['too deep below a key with a value', 'consent: written\n    |', 'key - "" at 0'],
  ];
  for (const [name, marked, expected] of cases) {
    it(`is known in ${name}`, () => {
      assert.equal(place(marked), expected);
    });
  }

  it('leaves out keys that are there already', () => {
    assert.deepEqual([...at('patient:\n  dob: 1961-08-09\n  |\n  id: C-1').present], ['born', 'id']);
    assert.deepEqual([...at('patient: {mrn: C-1, |}').present], ['id']);
    assert.ok(!at('procedures:\n  - site: nose\n  - |').present.has('site'));
  });

  it('covers the whole word, also right of the caret', () => {
    const { start, end } = at('con|sent: written');
    assert.deepEqual([start, end], [0, 7]);
    const flow = at('patient: {w|eight: 62 kg}');
    assert.deepEqual([flow.start, flow.end], [10, 16]);
  });

  it('answers every offset of a note without throwing', () => {
    const text =
      'visit: 2026-03-02\npatient: {id: C-1, allergies: [x]}\nprocedures:\n  - site: nose # c\n    specimen:\n    - label: A\n\n';
    for (let offset = 0; offset <= text.length; offset++) cursorAt(text, offset, noteIndex, 'note');
  });
});
