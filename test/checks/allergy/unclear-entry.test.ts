import assert from 'node:assert/strict';
import { flags, silent } from '../tester.ts';
import { note } from './_products.ts';

describe('allergy/unclear-entry', () => {
  it('flags a slip of the hand, with the word that was meant', () => {
    flags('allergy/unclear-entry', note('⟦lidocane⟧', 'dressing: gauze'), { severity: 'warning' });
    flags('allergy/unclear-entry', note('{to: ⟦bacitrasin⟧}', 'dressing: gauze'));
  });

  it('flags two answers that ran into one', () => {
    for (const entry of ['bacitracinnone', 'nonelatex', 'lidocaineyes', 'unknownbacitracin'])
      flags('allergy/unclear-entry', note(`⟦${entry}⟧`, 'dressing: gauze'), { severity: 'warning' });
    for (const entry of ['zorbaxol', 'penicillinase'])
      flags('allergy/unclear-entry', note(`⟦${entry}⟧`, 'dressing: gauze'), { severity: 'information' });
  });

  it('flags what sounds like a local anesthetic and is in no table', () => {
    for (const entry of ['foocaine', 'foocaine-type', 'foocaines', 'foobacane', 'foobacain - hives']) {
      const [finding] = flags('allergy/unclear-entry', note(`⟦${entry}⟧`, 'dressing: gauze'), {
        severity: 'warning',
      });
      assert.equal(finding?.form, 'caine');
    }
  });

  it('flags an order that may be an answer', () => {
    flags('allergy/unclear-entry', note('⟦no epinephrine⟧', 'dressing: gauze'), { severity: 'warning' });
  });

  it('says of a word that is in no table that nothing was compared with it', () => {
    for (const entry of ['zorbaxol', 'see chart', 'some eye drops', 'ibux'])
      flags('allergy/unclear-entry', note(`⟦${entry}⟧`, 'dressing: gauze'), { severity: 'information' });
    // Words that end as antihistamines do, and may be an antiseptic.
    for (const entry of ['velotadine', 'hexetidine'])
      flags('allergy/unclear-entry', note(`⟦${entry}⟧`, 'dressing: gauze'), { severity: 'information' });
    flags('allergy/unclear-entry', note('"penicillin, ⟦zorbaxol⟧"', 'dressing: gauze'));
    flags('allergy/unclear-entry', note('latex and ⟦zorbaxol⟧', 'dressing: gauze'));
    flags('allergy/unclear-entry', note('"latex, ⟦foocaine⟧"', 'dressing: gauze'), { severity: 'warning' });
    flags('allergy/unclear-entry', note('⟦penicilin⟧', 'dressing: gauze'), { severity: 'information' });
  });

  for (const entry of [
    '"latex, hives as a child"',
    'No tape allergy',
    'no reaction to latex, no lidocaine allergy',
    'patient denies any',
    '"penicillin, severe"',
    '"sulfa; reaction unknown"',
    'cats and dogs',
    'cefalexin',
    'ceftriaxone',
    'flucloxacillin',
    'lisinopril',
    'amlodipine',
    'sertraline and fluoxetine',
    'diclofenac',
    'shellfish',
    'peanuts',
    'bee stings',
    'grass pollen',
    'seasonal allergies',
    'no known food allergies',
    'not allergic to zorbaxol',
    'sulfa',
    'contrast dye',
    'flu vaccine',
    'lidocaine',
    'penicillin',
    'no known allergies',
    'no allergy to latex',
    'caines',
    'all -caine drugs',
    'cocaine',
    'pregabalin',
    'nystatin',
    'loratadine',
    'ranitidine',
    '??',
    'mold',
  ])
    it(`is silent on ${entry}`, () => {
      silent('allergy/unclear-entry', note(entry, 'dressing: gauze'));
    });
});
