import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { check } from '../../../src/checks/index.ts';
import { templatesFor } from '../../../src/editor/features/templates.ts';
import { noteIndex, readNote } from '../../../src/note/read.ts';
import { referenceTables } from '../../../src/practice/tables.ts';
import { beginningAt } from '../../../src/service/index.ts';

interface Snippet {
  readonly prefix: readonly string[];
  readonly description: string;
  readonly body: readonly string[];
}

const snippets = JSON.parse(
  readFileSync(join(import.meta.dirname, '../../../snippets/wheal.json'), 'utf8'),
) as Record<string, Snippet>;

/** The text that is there right after a snippet was inserted: each stop with its first choice or its placeholder. */
const expanded = ({ body }: Pick<Snippet, 'body'>): string =>
  body
    .join('\n')
    .replace(/\$\{\d+\|((?:\\.|[^,|\\])*)[^}]*\|\}/g, (_, first: string) => first.replace(/\\(.)/g, '$1'))
    .replace(/\$\{\d+:([^}]*)\}/g, '$1')
    .replace(/\$0/g, '');

/** Where a snippet would be in a note. */
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
            // What tells notes apart is made by the editor.
            !/^\s*(wheal|method|note-id):/.test(row) &&
            value.replace(/[[\]{}]|given:|language:|,| /g, '').replaceAll('??', '') !== '',
        );
        assert.deepEqual(facts, []);
      });

      it('goes from gap to gap in the order of its rows', () => {
        const stops = [...snippet.body.join('\n').matchAll(/\$\{(\d+)/g)].map(([, stop]) => Number(stop));
        assert.deepEqual(
          stops,
          stops.map((_, at) => at + 1),
        );
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

/** What the snippets offered at the mark `|` would make of the text. */
function offered(marked: string): readonly { label: string; text: string }[] {
  const offset = marked.indexOf('|');
  const text = marked.slice(0, offset) + marked.slice(offset + 1);
  const beginning = beginningAt(text, offset, { shapes: noteIndex, root: 'note' });
  if (beginning === undefined) return [];
  const { start, end } = beginning;
  return templatesFor(beginning).map(({ label, insert }) => ({
    label,
    text: text.slice(0, start) + expanded({ body: [insert] }) + text.slice(end),
  }));
}

const head = 'visit: 2026-03-02\npatient: {id: C-1}\n';
const procedure = `${head}procedures:\n  - site: nose\n    method: shave\n`;

describe('snippets while somebody types', () => {
  const labels = (marked: string): readonly string[] => offered(marked).map(({ label }) => label);

  it('are offered where their part can begin', () => {
    assert.deepEqual(labels('|'), ['visit']);
    const methods = [
      'shave',
      'deep',
      'scissor',
      'curettage',
      'punch',
      'punch-open',
      'incisional',
      'excisional',
      'freezing',
      'intralesional',
    ];
    for (const place of ['  |', '  pu|', '  - |', '- |', '|pu', '  - site: nose\n    method: shave\n  |'])
      assert.deepEqual(labels(`${head}procedures:\n${place}`), place === '|pu' ? [] : methods, place);
    assert.deepEqual(labels(`${procedure}    anesthetic:\n      |`), ['injection']);
    assert.deepEqual(labels(`${procedure}events:\n  - |`), ['event']);
  });

  it('are not offered in a value, between brackets, in a part that stands there, or where no part belongs', () => {
    for (const place of [
      'clinician: p|',
      `${procedure}    lesion: p|`,
      `${procedure}    |`,
      `${procedure}    anesthetic: [{|`,
      `${head}|`,
      'patient:\n  |',
      `${head}procedures:\n  site: nose\n  |`,
    ])
      assert.deepEqual(labels(place), [], place);
  });

  it('fall into the columns of the list that they join', () => {
    for (const [before, dash] of [
      ['  |', '  - '],
      ['  - |', '  - '],
      ['- |', '- '],
      ['    |', '  - '],
      ['  -   |', '  -   '],
    ] as const) {
      const made = offered(`${head}procedures:\n${before}`).find(({ label }) => label === 'punch')!.text;
      const rows = made.slice(`${head}procedures:\n`.length).split('\n');
      assert.equal(rows[0], `${dash}site: ??`, made);
      assert.equal(rows[1], `${' '.repeat(dash.length)}landmarks: ??`, made);
      const { findings } = check(readNote(made), { tables: referenceTables, today: '2026-03-02' });
      assert.deepEqual(
        findings.filter(({ code }) => code.startsWith('yaml/')),
        [],
      );
    }
  });
});
