import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { check } from '../../src/checks/index.ts';
import { readNote } from '../../src/note/read.ts';
import { referenceTables } from '../../src/practice/tables.ts';

interface Snippet {
  readonly prefix: readonly string[];
  readonly description: string;
  readonly body: readonly string[];
}

const snippets = JSON.parse(
  readFileSync(join(import.meta.dirname, '../../snippets/wheal.json'), 'utf8'),
) as Record<string, Snippet>;

/** The text that stands there right after a snippet was inserted: each stop with its first choice or its placeholder. */
const expanded = ({ body }: Snippet): string =>
  body
    .join('\n')
    .replace(/\$\{\d+\|((?:\\.|[^,|\\])*)[^}]*\|\}/g, (_, first: string) => first.replace(/\\(.)/g, '$1'))
    .replace(/\$\{\d+:([^}]*)\}/g, '$1')
    .replace(/\$0/g, '');

/** Where a snippet would stand in a note. */
function inNote(text: string): string {
  if (text.startsWith('wheal:')) return text;
  if (text.startsWith('- site')) return `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n${text}`;
  const indented = text.replace(/^/gm, '      ');
  return text.includes('agent')
    ? `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: nose\n    method: shave\n    anesthetic:\n${indented}`
    : `visit: 2026-03-02\npatient: {id: C-1}\nprocedures: []\nevents:\n${indented}`;
}

describe('snippets', () => {
  for (const [name, snippet] of Object.entries(snippets)) {
    describe(name, () => {
      const text = expanded(snippet);

      it('fills in no fact: every value but the method is still to be said', () => {
        const values = [...text.matchAll(/^[ -]*[\w-]+:[ \t]+(\S.*)$/gm)].map(([row, value = '']) => [
          row,
          value,
        ]);
        const facts = values.filter(
          ([row = '', value = '']) =>
            !/^\s*(wheal|method):/.test(row) &&
            value.replace(/[[\]{}]|given:|language:|,| /g, '').replaceAll('??', '') !== '',
        );
        assert.deepEqual(facts, []);
      });

      it('stands in a note without a fault of form', () => {
        const { findings } = check(readNote(inNote(text)), { tables: referenceTables, today: '2026-03-02' });
        const faults = findings.filter(({ code }) =>
          /^(yaml|quantity)\/|^shape\/(?!pending|missing|empty)/.test(code),
        );
        assert.deepEqual(
          faults.map(({ code, args }) => [code, args]),
          [],
        );
      });
    });
  }
});
