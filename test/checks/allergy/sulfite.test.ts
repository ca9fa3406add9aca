import { readPractice } from '../../../src/note/read.ts';
import { tablesOf } from '../../../src/practice/tables.ts';
import { flags, silent } from '../tester.ts';
import { note, given, withEpinephrine } from './_agent.ts';

describe('allergy/sulfite', () => {
  it('points at the epinephrine', () => {
    for (const entry of ['sulfite', 'sodium metabisulphite', '{to: bisulfite, reaction: asthma}'])
      flags(
        'allergy/sulfite',
        note(`[${entry}]`, '{agent: lidocaine, concentration: 1%, epinephrine: ⟦"1:100,000"⟧, volume: 1 mL}'),
        { severity: 'error' },
      );
  });

  it('is a warning where nothing was read about sulfite in that solution', () => {
    flags(
      'allergy/sulfite',
      note(
        '[sulfite]',
        '{agent: ropivacaine, concentration: 0.5%, epinephrine: ⟦"1:200,000"⟧, volume: 1 mL}',
      ),
      { severity: 'warning' },
    );
  });

  it('is silent on plain solutions and on sulfa, sulfate and sulfur', () => {
    silent('allergy/sulfite', note('[sulfite]', given('lidocaine')));
    silent(
      'allergy/sulfite',
      note('[sulfite]', '{agent: lidocaine, concentration: 1%, epinephrine: none, volume: 1 mL}'),
    );
    for (const entry of ['sulfa', 'sulfonamides', 'sulfur', 'sulfate', 'sulfadiazine', 'no sulfite allergy'])
      silent('allergy/sulfite', note(`[${entry}]`, withEpinephrine('lidocaine')));
  });

  it('warns where "no" may be an order', () => {
    flags(
      'allergy/sulfite',
      note('[no sulfite]', '{agent: lidocaine, concentration: 1%, epinephrine: ⟦"1:100,000"⟧, volume: 1 mL}'),
      { severity: 'warning' },
    );
  });

  it('is silent on a product that the practice file calls free of sulfite', () => {
    const practice =
      'stock:\n  - {product: clear vial, agent: lidocaine, concentration: 1%, epinephrine: "1:100,000", sulfite: no}\n';
    silent('allergy/sulfite', note('[sulfite]', '{product: clear vial, volume: 1 mL}'), {
      tables: tablesOf(readPractice(practice).value),
    });
  });
});

describe('allergy/sulfite in a plain solution', () => {
  it('flags procaine, which holds one in every form, and stays silent for plain lidocaine', () => {
    const of = (agent: string): string =>
      `visit: 2026-03-02\npatient: {id: C-1, age: 40 years, weight: 70 kg, allergies: [sulfites]}\nprocedures:\n  - site: left upper back\n    method: punch\n    anesthetic: {agent: ${agent}, concentration: 1%, volume: 1 mL}\n`;
    flags('allergy/sulfite', of('⟦procaine⟧'), { severity: 'error' });
    silent('allergy/sulfite', of('lidocaine'));
  });
});
