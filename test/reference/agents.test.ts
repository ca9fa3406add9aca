import assert from 'node:assert/strict';
import { agents } from '../../src/reference/agents.ts';
import { citation } from '../../src/reference/sources/index.ts';
import { referenceTables } from '../../src/practice/tables.ts';

describe('the table of anesthetics', () => {
  it('has every agent, found by its other names too', () => {
    const named = (word: string): string | undefined => referenceTables.agents.find(word)?.name;
    for (const name of [
      'lidocaine',
      'mepivacaine',
      'bupivacaine',
      'ropivacaine',
      'levobupivacaine',
      'prilocaine',
      'articaine',
      'chloroprocaine',
      'procaine',
      'tetracaine',
      'lidocaine-prilocaine cream',
      'lidocaine cream 4%',
      'lidocaine cream 5%',
      'diphenhydramine',
      'bacteriostatic saline',
      'vapocoolant spray',
    ])
      assert.equal(named(name), name);
    assert.equal(named('Lignocaine'), 'lidocaine');
    assert.equal(named('lidocaine and prilocaine cream'), 'lidocaine-prilocaine cream');
    assert.equal(named('constructor'), undefined);
  });

  // WikEM: amides have two letters i, esters one.
  it('tells amides and esters apart as the spelling does', () => {
    for (const { name, class: kind, form } of agents) {
      if (kind === 'none' || form !== 'injected') continue;
      const letters = name.split('i').length - 1;
      assert.equal(kind, letters >= 2 ? 'amide' : 'ester', name);
    }
  });

  it('has a source and a mark for every row and every fact', () => {
    for (const row of agents) {
      const facts = [row, ...row.preservatives, row.sulfiteWithEpinephrine, row.precipitates];
      for (const fact of facts) if (fact !== undefined) assert.notEqual(citation(fact.source), '', row.name);
    }
  });

  it('names only anesthetics of the table as what a cream contains', () => {
    for (const { contains } of agents)
      for (const name of contains)
        assert.ok(agents.some((row) => row.name === name && row.form === 'injected'));
  });
});
