import assert from 'node:assert/strict';
import fc from 'fast-check';
import { allergyNames, conditionNames, implantNames, medicineNames } from '../../../../src/checks/lookups.ts';
import type { Lookup } from '../../../../src/note/words/mentions/lookup.ts';
import { isAllDenied, readMentions } from '../../../../src/note/words/mentions/read.ts';
import { referenceTables } from '../../../../src/practice/tables.ts';
import type { WordRow } from '../../../../src/reference/types.ts';

const lookups: Readonly<Record<string, unknown>> = {
  allergies: allergyNames(referenceTables),
  implants: implantNames(referenceTables),
  conditions: conditionNames(referenceTables),
  medications: medicineNames(referenceTables),
};

/** What a text says of each thing it names: `lidocaine said`. */
const read = (key: string, text: string): readonly string[] =>
  readMentions(text, lookups[key] as Lookup<WordRow>).map(({ row, answer }) => `${row.name} ${answer}`);

const cases: Readonly<Record<string, readonly (readonly [text: string, ...answers: string[]])[]>> = {
  allergies: [
    ['lidocaine', 'lidocaine said'],
    ['No known drug allergies, lidocaine causes hives', 'lidocaine said'],
    ['tolerates procaine, not lidocaine', 'procaine denied', 'lidocaine said'],
    ['allergic to procaine, not lidocaine', 'procaine said', 'lidocaine denied'],
    ['penicillin only; lidocaine ok', 'penicillin said', 'lidocaine denied'],
    ['denies latex, adhesive or iodine allergy', 'latex denied', 'adhesive denied', 'iodine denied'],
    ['denies chest pain, latex allergy', 'latex unclear'],
    ['no latex', 'latex unclear'],
    ['no latex allergy', 'latex denied'],
    ['mother allergic to lidocaine', 'lidocaine denied'],
    ['caine family - seizures', 'local anesthetics said'],
    ['sulfa family', 'sulfonamide said'],
    ['family history of lidocaine allergy', 'lidocaine denied'],
    ['lidocaine family member', 'lidocaine denied'],
    ['mother allergic to lidocaine, drove herself home', 'lidocaine denied'],
    ['mother allergic to lidocaine, reacted herself once', 'lidocaine unclear'],
    ['mother says patient is allergic to lidocaine', 'lidocaine said'],
    ['latex?', 'latex unclear'],
    ['?latex', 'latex unclear'],
    ['latex? No.', 'latex denied'],
    ['latex: no', 'latex denied'],
    ['latex - denies', 'latex denied'],
    ['latex: hives', 'latex said'],
    ['none except lidocaine', 'lidocaine said'],
    ['NKDA but lidocaine gives hives', 'lidocaine said'],
    ['none (asked about latex and lidocaine)', 'latex denied', 'lidocaine denied'],
    ['does not tolerate lidocaine', 'lidocaine said'],
    ['has not well tolerated lidocaine', 'lidocaine unclear'],
    ['lidocaine tested negative, tolerated since', 'lidocaine denied'],
    ['tolerates lidocaine but gets hives', 'lidocaine unclear'],
    ['forgot to mention lidocaine allergy', 'lidocaine said'],
    ['h/o lidocaine allergy', 'lidocaine said'],
    ['no hives after lidocaine', 'lidocaine denied'],
    ['denies food allergies, silk (blisters 2018)', 'food allergies denied', 'silk said'],
    ['not allergic to penicillin, colophony (itching 2021)', 'penicillin denied', 'colophony said'],
    ['no latex allergy, no red meat allergy', 'latex denied', 'alpha-gal denied'],
    ['asked about latex, tape: none', 'latex denied', 'adhesive denied'],
    ['no hives, lidocaine', 'lidocaine said'],
    ['denies rash from latex or tape', 'latex denied', 'adhesive denied'],
  ],
  implants: [
    ['his wife, who has a pacemaker, waited outside', 'pacemaker denied'],
    ['the patient, who has a pacemaker, came alone', 'pacemaker said'],
    ['daughter, who has power of attorney, says pt has a pacemaker', 'pacemaker said'],
    ['not a pacemaker, an ICD', 'pacemaker denied', 'ICD unclear'],
    ['stents removed? no - pacemaker placed', 'stent denied', 'pacemaker said'],
    ['pacemaker', 'pacemaker said'],
    ['denies stents, pacemaker 2015', 'stent denied', 'pacemaker said'],
    ['no implants other than a pacemaker', 'pacemaker said'],
    ['pacemaker; hip hardware removed 2010', 'pacemaker said', 'metal implant denied'],
    ['father has a pacemaker', 'pacemaker denied'],
    ['never had a pacemaker', 'pacemaker denied'],
    ['none (asked about pacemaker and ICD)', 'pacemaker denied', 'ICD denied'],
    ['pacemaker: no', 'pacemaker denied'],
    ['pacemaker removed 2019', 'pacemaker denied'],
    ['ICD explanted', 'ICD denied'],
    ['h/o pacemaker, removed 2019', 'pacemaker denied'],
    ['pacemaker not removed', 'pacemaker said'],
    ['old ICD removed 2012, new one placed same day', 'ICD said'],
    ['ICD removed, leads in place', 'ICD said'],
    ['history of pacemaker', 'pacemaker unclear'],
    ['s/p pacemaker placement 2015', 'pacemaker said'],
    ['denies chest pain, pacemaker', 'pacemaker unclear'],
    ['denies ICD, pacemaker, DBS', 'ICD denied', 'pacemaker denied', 'deep brain stimulator denied'],
    ['wife has ICD, pt none', 'ICD denied'],
    ['possible pacemaker', 'pacemaker unclear'],
  ],
  conditions: [
    ['h/o congenital methemoglobinemia', 'methemoglobinemia said'],
    ["hx Raynaud's", 'Raynaud phenomenon said'],
    ["history of Raynaud's", 'Raynaud phenomenon said'],
    ['suspected pheochromocytoma', 'pheochromocytoma unclear'],
    ['r/o pheochromocytoma, workup pending', 'pheochromocytoma unclear'],
    ['congenital methemoglobinemia, glaucoma on drops', 'methemoglobinemia said'],
    ['pheochromocytoma resected 2015, cured', 'pheochromocytoma denied'],
    ['pheochromocytoma resected 2015', 'pheochromocytoma said'],
    ['FHx: CAD, pheochromocytoma', 'pheochromocytoma denied'],
    ['G6PD deficiency ruled out 2019', 'G6PD deficiency denied'],
    [
      'G6PD deficiency normal, hypertension, uncontrolled',
      'G6PD deficiency denied',
      'uncontrolled hypertension said',
    ],
    ['G6PD deficiency not ruled out', 'G6PD deficiency unclear'],
  ],
  medications: [
    ['stopped aspirin 2019, takes dapsone', 'dapsone said'],
    ['dapsone stopped 2019', 'dapsone denied'],
    ['not on dapsone or propranolol', 'dapsone denied', 'propranolol denied'],
    ['dapsone held today', 'dapsone unclear'],
    ['no fever, dapsone daily', 'dapsone said'],
  ],
};

describe('readMentions', () => {
  for (const [key, texts] of Object.entries(cases))
    for (const [text, ...answers] of texts)
      it(`${key}: ${text}`, () => {
        assert.deepEqual(read(key, text), answers);
      });

  it('gives the exact place of each name', () => {
    const text = 'denies latex,  adhesive';
    assert.deepEqual(
      readMentions(text, allergyNames(referenceTables)).map(({ from, to }) => text.slice(from, to)),
      ['latex', 'adhesive'],
    );
  });

  it('reads any text, and no bracket or mark is too many', () => {
    const words = fc.constantFrom(
      '(',
      ')',
      ',',
      '?',
      ':',
      'no',
      'denies',
      'pacemaker',
      'removed',
      '.',
      'but',
      'father',
    );
    fc.assert(
      fc.property(fc.array(words, { maxLength: 40 }), (some) => {
        const text = some.join(' ');
        for (const { from, to } of readMentions(text, implantNames(referenceTables)))
          assert.equal(text.slice(from, to), 'pacemaker');
      }),
    );
    assert.equal(readMentions(`${'('.repeat(20_000)}pacemaker`, implantNames(referenceTables)).length, 1);
    assert.equal(readMentions('no pacemaker, '.repeat(5_000), implantNames(referenceTables)).length, 5_000);
  });
});

describe('isAllDenied', () => {
  it('reads names that no table knows', () => {
    for (const text of ['flux capacitor removed', 'no device of any kind', 'None: nothing', 'denies'])
      assert.ok(isAllDenied(text, implantNames(referenceTables)), text);
    for (const text of ['flux capacitor', 'no stent; flux capacitor', 'flux capacitor not removed'])
      assert.ok(!isAllDenied(text, implantNames(referenceTables)), text);
  });
});
