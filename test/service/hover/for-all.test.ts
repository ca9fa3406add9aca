import assert from 'node:assert/strict';
import { completionsAt, definitionAt, hoverAt } from '../../../src/service/index.ts';
import { referenceTables } from '../../../src/practice/tables.ts';
import { noteIndex } from '../../../src/note/read.ts';
import { analysed } from '../notes.ts';

const note = `visit: 2026-03-02
patient: {id: C-1}
for-all:
  dressing: [petrolatum, gauze]
  specimen: {medium: formalin}
procedures:
  - site: left cheek
    method: punch
    specimen: {label: A}
  - site: right cheek
    method: punch
    dressing: none
    specimen: {label: B}
  - site: left ear
    method: cryotherapy
`;
const analysis = analysed(note);
const hover = (words: string): string => hoverAt(analysis, note.indexOf(words) + 1)?.markdown ?? '';

describe('for-all in the editor', () => {
  it('says beside a key and its value for which procedures they hold', () => {
    assert.match(hover('dressing: [pet'), /\*\*Holds for\*\*\n\n- 1\\?\. left cheek\n\n/);
    assert.doesNotMatch(hover('gauze'), /right cheek|left ear/);
    assert.match(hover('formalin'), /- 1\\?\. left cheek\n- 2\\?\. right cheek/);
  });

  it('says at the site what a procedure takes over, and where it is', () => {
    assert.match(hover('left cheek'), /\*\*From for-all\*\*\n\n- dressing: line 4\n- medium: line 5/);
    assert.match(hover('right cheek'), /\*\*From for-all\*\*\n\n- medium: line 5/);
    assert.doesNotMatch(hover('left ear'), /From for-all/);
  });

  it('leads from what holds for all to the procedures', () => {
    const targets = definitionAt(analysis, note.indexOf('formalin'))?.targets ?? [];
    assert.deepEqual(
      targets.map(({ start, end }) => note.slice(start, end)),
      ['left cheek', 'right cheek'],
    );
  });

  it('has its keys and words among the completions', () => {
    const offered = (before: string): readonly string[] => {
      const text = `visit: 2026-03-02\nfor-all:\n  ${before}`;
      const writing = {
        shapes: noteIndex,
        root: 'note',
        tables: referenceTables,
        today: '2026-03-02',
      } as const;
      return completionsAt(text, text.length, writing).map(({ label }) => label);
    };
    assert.deepEqual(offered(''), ['preparation', 'instrument', 'dressing', 'specimen']);
    assert.ok(offered('dressing: ').includes('petrolatum'));
    assert.ok(offered('specimen: {medium: ').includes('formalin'));
    assert.deepEqual(offered('specimen: {'), ['medium', 'tests', 'laboratory']);
  });
});
