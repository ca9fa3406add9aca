import { messageOf } from '../../../src/checks/index.ts';
import assert from 'node:assert/strict';
import { flags, judgeBy, silent } from '../tester.ts';
import { agents, given, note } from './_agent.ts';
import { tablesIn } from '../../practice/tables-of.ts';

describe('an allergy to an anesthetic', () => {
  for (const allergy of agents)
    it(`to ${allergy} is one to that very agent`, () => {
      for (const agent of agents) {
        const found = judgeBy('allergy/agent', note(`[${allergy}]`, given(agent)));
        assert.deepEqual(
          found.map(({ severity }) => severity),
          allergy === agent ? ['error'] : [],
          `${allergy} and ${agent}`,
        );
      }
    });

  it('to local anesthetics, in the words of patients', () => {
    for (const entry of ['anesthetics', 'local anaesthesia', 'numbing shot', '-caines', 'caine allergy'])
      flags('allergy/agent', note(`["${entry}"]`, given('⟦lidocaine⟧')), { severity: 'error' });
    silent('allergy/agent', note('[general anesthesia]', given('lidocaine')));
  });

  it('is none where an entry says that it was tolerated', () => {
    for (const entry of ['none (tolerated lidocaine before)', 'bupivacaine rash, tolerates lidocaine'])
      silent('allergy/agent', note(`["${entry}"]`, given('lidocaine')));
    for (const entry of [
      'does not tolerate lidocaine',
      'cannot tolerate lidocaine',
      'poorly tolerated lidocaine',
      'has not well tolerated lidocaine',
      'never has tolerated lidocaine',
      'no longer tolerates lidocaine',
      'lidocaine not tolerated',
    ])
      flags('allergy/agent', note(`["${entry}"]`, given('⟦lidocaine⟧')));
  });

  it('to a whole class is a warning for the agent that was tolerated, and for no other', () => {
    const class_ = '[{to: local anesthetics, tolerates: lidocaine}]';
    flags('allergy/agent', note(class_, given('⟦lidocaine⟧')), { severity: 'warning' });
    flags('allergy/agent', note(class_, given('⟦bupivacaine⟧')), { severity: 'error' });
    const tested = '[{to: amides, tested: negative to mepivacaine}]';
    flags('allergy/agent', note(tested, given('⟦mepivacaine⟧')), { severity: 'warning' });
    flags('allergy/agent', note(tested, given('⟦lidocaine⟧')), { severity: 'error' });
  });

  it('stays one where the racing heart came with signs of an allergy', () => {
    for (const reaction of [
      'anxiety and could not breathe',
      "shaking and couldn't breathe",
      'tachycardia and throat tightness',
      'headache and lip tingling',
      'dizzy and lips blue',
    ])
      flags('allergy/agent', note(`[{to: lidocaine, reaction: "${reaction}"}]`, given('⟦lidocaine⟧')), {
        severity: 'error',
      });
  });

  it('points at the agent, and at the entry beside it', () => {
    const [finding] = flags(
      'allergy/agent',
      note('[{to: lidocaine, reaction: hives}]', given('⟦lignocaine⟧')),
      {
        severity: 'error',
      },
    );
    const text = note('[{to: lidocaine, reaction: hives}]', given('lignocaine'));
    assert.deepEqual(
      finding?.related.map(({ start, end }) => text.slice(start, end)),
      ['lidocaine'],
    );
  });

  it('points at the product of the practice that holds it', () => {
    const practice = 'stock:\n  - {product: blue vial, agent: lidocaine, concentration: 1%}\n';
    flags('allergy/agent', note('[lidocaine]', '{product: ⟦blue vial⟧, volume: 1 mL}'), {
      tables: tablesIn(practice),
    });
  });

  it('finds both anesthetics of a cream, and what stands at the head of the note', () => {
    flags('allergy/agent', note('[prilocaine]', '{agent: ⟦lidocaine-prilocaine cream⟧, amount: 2 g}'));
    flags('allergy/agent', `${note('[lidocaine]', given('procaine'))}anesthetic: ${given('⟦lidocaine⟧')}\n`);
  });

  it('takes in the class that an entry names', () => {
    flags('allergy/agent', note('[amide anaesthetics]', given('⟦mepivacaine⟧')), { severity: 'error' });
    flags('allergy/agent', note('[local anesthetics]', given('⟦chloroprocaine⟧')), { severity: 'error' });
    silent('allergy/agent', note('[ester anesthetics]', given('lidocaine')));
    silent('allergy/agent', note('[local anesthetics]', given('diphenhydramine')));
  });

  for (const entry of [
    '{to: lidocaine, reaction: racing heart}',
    '{to: lidocaine, reaction: "palpitations, no hives"}',
    '{to: lidocaine, reaction: fainted at the dentist}',
    '{to: lidocaine, tolerates: lidocaine without epinephrine}',
    '{to: lidocaine, tested: negative patch test to lidocaine}',
  ])
    it(`is a warning where the entry is ${entry}`, () => {
      flags('allergy/agent', note(`[${entry}]`, given('⟦lidocaine⟧')), { severity: 'warning' });
    });

  for (const entry of [
    '{to: lidocaine, reaction: racing heart and hives}',
    '{to: lidocaine, tolerates: mepivacaine}',
    '{to: lidocaine, tested: false negative}',
    '{to: lidocaine, tested: negative test pending}',
    '{to: lidocaine, tested: possibly negative}',
    '{to: lidocaine, tested: "negative, false negative possible"}',
    '{to: lidocaine, tested: positive patch test}',
    'history of anaphylaxis to lidocaine',
    'does not tolerate lidocaine',
  ])
    it(`stays an error where the entry is ${entry}`, () => {
      flags('allergy/agent', note(`[${entry}]`, given('⟦lidocaine⟧')), { severity: 'error' });
    });

  for (const entry of [
    'none',
    'NKDA',
    'unknown',
    '??',
    '[no known drug allergies]',
    '[not allergic to lidocaine]',
    '[penicillin, sulfa, shellfish, latex]',
    '[constructor, __proto__]',
    '[]',
  ])
    it(`is not seen in ${entry}`, () => {
      silent('allergy/agent', note(entry, given('lidocaine')));
    });

  it('goes by the graver of several entries', () => {
    flags(
      'allergy/agent',
      note('[{to: lidocaine, reaction: racing heart}, lignocaine]', given('⟦lidocaine⟧')),
      {
        severity: 'error',
      },
    );
  });
});

describe('what is left to advise', () => {
  const of = (allergies: string, anesthetic: string): string =>
    `visit: 2026-03-02\npatient: {id: C-1, age: 40 years, weight: 70 kg, allergies: ${allergies}}\nprocedures:\n` +
    `  - site: left upper back\n    method: punch\n    anesthetic: {${anesthetic}}\n`;
  const plain = 'agent: ⟦lidocaine⟧, concentration: 1%, volume: 1 mL';

  it('names no other class to who is allergic to all of them', () => {
    for (const allergies of ['[all -caines]', '[amides, esters]']) {
      const [finding] = flags('allergy/agent', of(allergies, plain), { severity: 'error' });
      assert.match(messageOf(finding!), /knows no other local anesthetic/);
    }
    const [one] = flags('allergy/agent', of('[lidocaine]', plain), { severity: 'error' });
    assert.match(messageOf(one!), /Use another class/);
  });

  it('does not send from bacteriostatic saline to another vial of it', () => {
    const [finding] = flags(
      'allergy/preservative',
      of('[benzyl alcohol]', 'agent: ⟦bacteriostatic saline⟧, volume: 1 mL'),
    );
    assert.match(messageOf(finding!), /plain saline does not numb/);
  });
});
