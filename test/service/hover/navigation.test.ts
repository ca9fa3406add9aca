import assert from 'node:assert/strict';
import { definitionAt, diagnosticsOf, linksOf, selectionsAt } from '../../../src/service/index.ts';
import { analysed } from '../notes.ts';

const note = `visit: 2026-03-02
patient: {id: C-1}
procedures:
  - site: left cheek
    method: punch
    specimen: {label: A, medium: formalin}
    accepted: [{check: closure/missing, reason: left open, by: K.O.}, {check: no/such, reason: x}]
  - site: right cheek
    method: punch
    same-as: A
    specimen: {label: B, medium: formalin}
events:
  - {on: 2026-03-03, kind: bleeding, procedure: B}
  - {on: 2026-03-03, kind: bleeding, procedure: 1}
`;
const analysis = analysed(note);

/** The texts to which the words at a place lead. */
const targets = (words: string, more = 0): readonly string[] =>
  (definitionAt(analysis, note.indexOf(words) + words.length - 1 - more)?.targets ?? []).map(
    ({ start, end }) => `${note.slice(start, end)} ${note.slice(0, start).split('\n').length}`,
  );

describe('ways through a note', () => {
  it('lead from an accepted code to its page and to its finding in the same part', () => {
    assert.deepEqual(
      linksOf(analysis).map(({ start, end, code }) => [note.slice(start, end), code]),
      [['closure/missing', 'closure/missing']],
    );
    assert.deepEqual(targets('check: closure/missing'), ['site 4']);
  });

  it('lead to an accepted finding from every word of its acceptance', () => {
    for (const words of ['{check', 'reason', 'left open', 'by', 'K.O.'])
      assert.deepEqual(targets(words), ['site 4'], words);
    assert.deepEqual(targets('no/such'), []);
  });

  it('lead back by what the editor shows: an accepted finding stays to be seen, with who accepted it and why', () => {
    const shown = diagnosticsOf(note, analysis.judgement.findings).filter(
      ({ code }) => code === 'closure/missing',
    );
    assert.deepEqual(
      shown.map(({ severity }) => severity),
      ['information', 'warning'],
    );
    assert.match(shown[0]?.message ?? '', / Accepted by K\.O\.: left open$/);
    assert.doesNotMatch(shown[1]?.message ?? '', /Accepted/);
  });

  it('lead from a label to its specimen', () => {
    assert.deepEqual(targets('same-as: A'), ['A 6']);
    assert.deepEqual(targets('procedure: B'), ['B 11']);
  });

  it('lead from a number to its procedure', () => {
    assert.deepEqual(targets('procedure: 1'), ['left cheek 4']);
  });

  it('lead nowhere from other words', () => {
    assert.deepEqual(targets('method: punch'), []);
    assert.deepEqual(targets('same-as', 1), []);
  });

  it('let a selection grow from a word to the whole', () => {
    const ranges = selectionsAt(analysis, note.indexOf('formalin') + 2);
    const texts = ranges.map(({ start, end }) => note.slice(start, end));
    assert.deepEqual(texts.slice(0, 3), ['formalin', 'medium: formalin', '{label: A, medium: formalin}']);
    assert.equal(texts.at(-1), note);
    const [onKey] = selectionsAt(analysis, note.indexOf('method') + 1);
    assert.equal(note.slice(onKey?.start, onKey?.end), 'method');
  });
});
