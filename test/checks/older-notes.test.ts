/** What the page on older notes says is so: its keys exist, its examples are read, and what it says of results. */
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { check } from '../../src/checks/index.ts';
import { noteIndex, readNote } from '../../src/note/read.ts';
import { referenceTables as tables } from '../../src/practice/tables.ts';

const page = readFileSync('docs/older-notes.md', 'utf8');
const examples = [...page.matchAll(/```yaml\n([^`]*)```/g)].map(([, text = '']) => text);

const indented = (text: string, by: number): string => text.replace(/^(?=.)/gm, ' '.repeat(by));

/** A note in which the example is at the place of its first key. */
function noteWith(example: string): string {
  const atTop = example.startsWith('for-all:') ? example : '';
  const inProcedure = example.startsWith('sutures-out:') ? indented(example, 4) : '';
  const inSpecimen = example.startsWith('results:') ? indented(example, 6) : '';
  return `wheal: 1\nvisit: 2026-01-12\npatient: {id: X-1, born: 1961-08-09}\n${atTop}procedures:\n  - site: left upper back\n    method: shave\n${inProcedure}    specimen:\n      label: A\n${inSpecimen}`;
}

const codesOf = (note: string): readonly string[] =>
  check(readNote(note), { tables, today: '2026-04-30' }).findings.map(({ code }) => code);

const result = (more: string): string =>
  `wheal: 1\nvisit: 2026-01-12\npatient: {id: X-1, born: 1961-08-09}\nprocedures:\n  - site: left upper back\n    method: shave\n    specimen: {label: A, results: [{received: 2026-01-19, diagnosis: melanoma, ${more}}]}\n`;

describe('the page on older notes', () => {
  it('names keys that notes have', () => {
    const names = new Set([...noteIndex.values()].flatMap(({ byName }) => [...byName.keys()]));
    for (const [, row = ''] of page.matchAll(/^\| (`[^|]+) \|/gm))
      for (const [, key = ''] of row.matchAll(/`([a-z.-]+)`/g))
        for (const part of key.split('.')) assert.ok(names.has(part) || part === 'format', key);
  });

  it('has examples in which nothing is unknown', () => {
    assert.equal(examples.length, 3);
    for (const example of examples)
      assert.deepEqual(
        codesOf(noteWith(example)).filter((code) => /^(?:shape|yaml|quantity)\//.test(code)),
        [],
        example,
      );
  });

  it('is right about results: a voicemail leaves one open, a recall is no step', () => {
    assert.ok(codesOf(result('told: {on: 2026-01-20, how: voicemail}')).includes('follow-up/attempts-only'));
    assert.ok(
      !codesOf(result('told: {on: 2026-01-20, how: telephone}, next: excision')).includes(
        'follow-up/attempts-only',
      ),
    );
    assert.ok(
      !codesOf(result('told: {on: 2026-01-20, how: telephone}, next: follow up 1 year')).includes(
        'follow-up/step-not-done',
      ),
    );
    assert.ok(
      codesOf(result('told: {on: 2026-01-20, how: telephone}, next: none needed')).includes(
        'follow-up/no-plan',
      ),
    );
  });
});
