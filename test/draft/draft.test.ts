import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { draft } from '../../src/draft/draft.ts';
import { referenceTables as tables } from '../../src/practice/tables.ts';
import { unaccounted } from './lost.ts';

interface Own {
  readonly about: string;
  readonly text: string;
  readonly facts: Readonly<Record<string, string | number | readonly string[]>>;
  readonly open?: readonly string[];
}

const own = parse(readFileSync('test/fixtures/drafts.yaml', 'utf8')) as readonly Own[];

/** The facts of a draft by their path; of a list all words. */
function factsOf(text: string): Record<string, string | string[]> {
  const facts: Record<string, string | string[]> = {};
  for (const { path, value } of draft(text, tables).facts) {
    const key = path.join('.');
    const before = facts[key];
    facts[key] = before === undefined ? value : [...[before].flat(), value];
  }
  return facts;
}

describe('drafts of our own texts', () => {
  for (const { about, text, facts, open = [] } of own)
    it(about, () => {
      const wanted = Object.entries(facts).map(([key, value]) => [
        key,
        Array.isArray(value) ? value : String(value),
      ]);
      assert.deepEqual(factsOf(text), Object.fromEntries(wanted));
      const made = draft(text, tables);
      assert.deepEqual(
        made.conflicts.map(({ path }) => path.join('.')),
        open,
      );
      assert.deepEqual(unaccounted(text, made), []);
    });
});

describe('what a draft keeps', () => {
  it('a heading beside words that have no place', () => {
    const { note } = draft('Punch of the right cheek. Allergies: none except latex.', tables);
    assert.match(note, /Allergies: none except latex/);
  });

  for (const text of [
    'Jane Doe is a 64-year-old. Punch of the right cheek.',
    'Punch of the right cheek. Son John Doe drove her home.',
    'Punch of the right cheek. Her husband John was told.',
  ])
    it(`no name of a person: ${text}`, () => {
      assert.doesNotMatch(draft(text, tables).note, /Jane|John|Doe/);
    });

  it('names of diseases', () => {
    assert.match(draft('Punch of the right cheek. Bowen Disease suspected.', tables).note, /Bowen Disease/);
  });
});
