import assert from 'node:assert/strict';
import { flags, judgeBy, silent } from '../tester.ts';
import { agents, amides, esters, given, note } from './_agent.ts';

const areOneClass = (one: string, other: string): boolean =>
  [amides, esters].some((group) => group.includes(one) && group.includes(other));

describe('an allergy to an anesthetic of the same class', () => {
  for (const allergy of agents)
    it(`to ${allergy} is judged with every agent`, () => {
      for (const agent of agents) {
        const found = judgeBy('allergy/same-class', note(`[${allergy}]`, given(agent)));
        assert.deepEqual(
          found.map(({ severity }) => severity),
          allergy !== agent && areOneClass(allergy, agent) ? ['warning'] : [],
          `${allergy} and ${agent}`,
        );
      }
    });

  for (const entry of ['none', 'NKDA', 'unknown', '??', '[not allergic to lidocaine]', '[]'])
    it(`is not seen in ${entry}`, () => {
      silent('allergy/same-class', note(entry, given('lidocaine')));
    });

  it('counts though another of the class was tolerated', () => {
    flags('allergy/same-class', note('["bupivacaine rash, tolerates mepivacaine"]', given('⟦ropivacaine⟧')));
  });

  it('to another amide is quiet where this one was tolerated or tested since', () => {
    silent('allergy/same-class', note('[{to: bupivacaine, tolerates: [lidocaine]}]', given('lidocaine')));
    silent(
      'allergy/same-class',
      note('[{to: bupivacaine, tested: negative skin test to lidocaine}]', given('lidocaine')),
    );
    flags('allergy/same-class', note('[{to: bupivacaine, tolerates: [mepivacaine]}]', given('⟦lidocaine⟧')));
  });

  it('goes by the graver of several entries', () => {
    flags(
      'allergy/same-class',
      note('[{to: bupivacaine, reaction: palpitations}, articaine]', given('⟦lidocaine⟧')),
    );
    silent('allergy/same-class', note('[{to: bupivacaine, reaction: palpitations}]', given('lidocaine')));
  });

  it('to the metabolite is one to esters', () => {
    for (const entry of ['PABA', 'para-aminobenzoic acid', 'benzocaine'])
      flags('allergy/same-class', note(`[${entry}]`, given('⟦chloroprocaine⟧')), { severity: 'warning' });
    silent('allergy/same-class', note('[PABA]', given('lidocaine')));
  });
});
