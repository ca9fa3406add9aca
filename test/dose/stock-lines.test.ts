import assert from 'node:assert/strict';
import { readPractice } from '../../src/note/read.ts';
import { tablesOf } from '../../src/practice/tables.ts';
import { note } from '../checks/dose/notes.ts';
import { flags, judge } from '../checks/tester.ts';

describe('a dictated line that names a product of the stock', () => {
  const { value } = readPractice(
    `stock:
  - {product: lido 1% epi, agent: lidocaine, concentration: 1%, epinephrine: "1:100,000"}
  - {product: blue vial 0.5%, agent: bupivacaine, concentration: 0.5%, epinephrine: "1:200,000"}
`,
  );
  const tables = tablesOf(value);
  const line = (text: string): string =>
    `visit: 2026-03-02\npatient: {id: C-1, born: 1961-08-09, weight: 62 kg}\nprocedures:\n  - site: left upper back\n    method: punch\n    anesthetic: ${text}\n`;

  for (const text of ['1 mL lido 1% epi', 'Lido 1% Epi 1 mL', '1 mL of lido 1% epi', 'lido 1% epi, 1 mL'])
    it(`is that product: ${text}`, () => {
      const { findings, dose } = judge(line(text), { tables });
      assert.deepEqual(
        findings.filter(({ code }) => /^(?:dose|quantity)/.test(code)),
        [],
      );
      assert.deepEqual([dose?.epinephrineMicrograms, dose?.agents[0]?.mg], [10, 10]);
      assert.equal(dose?.agents[0]?.agent, 'lidocaine');
    });

  it('gives a word that is no anesthetic the meaning that the practice gave it', () => {
    const { findings, dose } = judge(line('2 mL blue vial 0.5%'), { tables });
    assert.deepEqual(
      findings.filter(({ severity }) => severity === 'error').map(({ code }) => code),
      [],
    );
    assert.deepEqual([dose?.agents[0]?.agent, dose?.agents[0]?.mg], ['bupivacaine', 10]);
    assert.equal(dose?.epinephrineMicrograms, 10);
    flags('allergy/agent', line('2 mL ⟦blue vial⟧ 0.5%').replace('born', 'allergies: bupivacaine, born'), {
      tables,
    });
  });

  it('asks all the same where a word is more, less or another, and where no practice has it', () => {
    for (const text of ['1 mL lido 1% with ⟦epi⟧', '1 mL lido 2% ⟦epi⟧', '1 mL lido ⟦epi⟧ 1%'])
      flags('quantity/strength-unsaid', line(text), { tables });
    flags('quantity/strength-unsaid', line('1 mL lido 1% ⟦epi⟧'));
    flags('dose/unknown-agent', line('2 mL ⟦blue vial⟧ 0.25%'), { tables });
    flags('dose/unknown-agent', line('2 mL ⟦blue vial⟧ 0.5%'));
    flags('dose/volume-missing', line('⟦lido 1% epi⟧'), { tables });
  });

  it('is not taken from keys that are written out', () => {
    flags(
      'quantity/strength-unsaid',
      note(['agent: lido, concentration: 1%, epinephrine: ⟦epi⟧, volume: 1 mL']),
      { tables },
    );
  });
});
