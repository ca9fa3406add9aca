import assert from 'node:assert/strict';
import { wordTables } from '../../src/checks/shape/_words.ts';
import { phrasesOf } from '../../src/note/words/phrases.ts';
import type { WordTable } from '../../src/note/words/word-table.ts';
import { referenceTables as tables } from '../../src/practice/tables.ts';
import type { WordRow } from '../../src/reference/types.ts';
import { qualifiers } from '../../src/reference/qualifiers.ts';

describe('words that change nothing', () => {
  const dangers: readonly WordTable<WordRow>[] = [tables.agents, tables.implants, tables.bloodThinners];

  it('stand beside tables that are looked up', () => {
    for (const { table } of qualifiers)
      assert.ok(table === 'any' || table === 'recalls' || wordTables.has(table), table);
  });

  for (const { table, words } of qualifiers)
    it(`name no anesthetic, implant or blood thinner, and deny nothing: ${table}`, () => {
      for (const word of words) {
        for (const danger of dangers) assert.deepEqual(phrasesOf(danger).mentionsIn(word), [], word);
        const denies = /^(?:no|not|without)\b/.test(word);
        const only =
          /^(?:no|not|without) (?:\w+ )*(?:current|electricity|bleeding|difficulty|complications?|needed|required|entered|used)$/;
        assert.ok(!denies || only.test(word), word);
      }
    });

  it('beside words of hemostasis name none of them that heats or carries current', () => {
    for (const { words } of qualifiers.filter(({ table }) => table === 'any' || table === 'hemostasis'))
      for (const word of words) {
        const hot = ['current', 'either', 'heat'];
        const row = tables.hemostasis.find(word);
        assert.ok(row?.stops === undefined || !hot.includes(row.stops), word);
      }
  });
});
