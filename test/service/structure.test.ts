import assert from 'node:assert/strict';
import { noteIndex, readNote } from '../../src/note/read.ts';
import { foldsOf } from '../../src/service/folding.ts';
import { locate } from '../../src/service/analysis/locate.ts';
import { outlineOf } from '../../src/service/outline.ts';

const text = `visit: 2026-03-02
patient:
  id: C-1
  allergies: [latex]

procedures:
  - site: left cheek
    method: punch
    anesthetic:
      - {agent: lidocaine, concentration: 1%, volume: 1 mL}
    specimen:
      label: A
      medium: formalin
  - site: nose
    method: shave
`;
const source = readNote(text);

describe('the structure of a note', () => {
  it('is an outline of patient, procedures, injections and specimens', () => {
    const shape = outlineOf(source.value!).map(({ name, detail, children }) => [
      name,
      detail,
      children.map((child) => child.name),
    ]);
    assert.deepEqual(shape, [
      ['C-1', '', []],
      ['1. left cheek', 'punch', ['lidocaine, 1%', 'specimen A']],
      ['2. nose', 'shave', []],
    ]);
    for (const { start, end, selection } of outlineOf(source.value!))
      assert.ok(start <= selection.start && selection.end <= end);
  });

  it('folds what goes over several rows', () => {
    assert.deepEqual(
      foldsOf(text, source.root).map(({ start, end }) => `${start}-${end}`),
      ['1-3', '5-14', '6-12', '8-9', '10-12', '13-14'],
    );
  });

  it('tells what stands at an offset, and what is around it', () => {
    const at = (word: string): ReturnType<typeof locate> =>
      locate(source.root, text.indexOf(word) + 1, noteIndex, 'note');
    assert.deepEqual(at('latex').path, ['patient', 'allergies', 0]);
    assert.deepEqual(at('1 mL').path, ['procedures', 0, 'anesthetic', 0, 'volume']);
    assert.equal(at('medium').onKey, true);
    assert.equal(at('medium').key?.key, 'medium');
    assert.equal(at('formalin').onKey, false);
    const around = at('1 mL').around.map(({ start, end }) => text.slice(start, end));
    assert.ok(
      around.includes('1 mL') &&
        around.includes('volume: 1 mL') &&
        around.includes('{agent: lidocaine, concentration: 1%, volume: 1 mL}'),
    );
    for (let offset = 0; offset <= text.length; offset++) locate(source.root, offset, noteIndex, 'note');
  });
});
