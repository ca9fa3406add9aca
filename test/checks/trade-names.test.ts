import assert from 'node:assert/strict';
import { messageOf } from '../../src/checks/index.ts';
import { readPractice } from '../../src/note/read.ts';
import { tablesOf } from '../../src/practice/tables.ts';
import { tradeNames } from '../../src/reference/trade-names.ts';
import { flags, judge, silent } from './tester.ts';

const nameOf = (generic: string): string => {
  const found = tradeNames.find((one) => one.generic === generic);
  assert.ok(found, `a trade name for ${generic}`);
  return found.name;
};

const note = (patient: string, procedure: string): string =>
  `visit: 2026-03-02\npatient: {id: C-1, born: 1961-08-09, weight: 62 kg, ${patient}}\nprocedures:\n  - site: left cheek\n    method: punch\n    size: 4 mm\n    ${procedure}\n`;

describe('trade names in a note', () => {
  it('of an allergy forbid what holds the drug', () => {
    const name = nameOf('triple antibiotic ointment');
    for (const entry of [name, name.toLowerCase(), `{to: ${name}, reaction: rash}`, `allergic to ${name}`])
      flags('allergy/dressing', note(`allergies: [${entry}]`, 'dressing: [⟦bacitracin⟧]'), {
        severity: 'error',
      });
    silent('allergy/dressing', note(`allergies: [${name}]`, 'dressing: [petrolatum]'));
    flags(
      'allergy/agent',
      note(
        `allergies: [${nameOf('articaine')}]`,
        'anesthetic: [{agent: ⟦articaine⟧, concentration: 4%, volume: 1 mL}]',
      ),
      { severity: 'error' },
    );
  });

  it('of what was used count as the drug or the material', () => {
    flags(
      'allergy/dressing',
      note('allergies: [bacitracin]', `dressing: [⟦${nameOf('double antibiotic ointment')}⟧]`),
    );
    flags('allergy/closure', note('allergies: [cyanoacrylate]', `closure: ⟦${nameOf('cyanoacrylate')}⟧`));
    flags(
      'allergy/closure',
      note('allergies: [polyglactin]', `closure: {material: ⟦${nameOf('polyglactin')}⟧, size: 5-0}`),
    );
    silent('shape/unknown-word', note('allergies: none', `dressing: [${nameOf('transparent film')}]`));
  });

  it('of a medicine give its care', () => {
    const procedure =
      'anesthetic: [{agent: lidocaine, concentration: 1%, epinephrine: "1:100,000", volume: 6 mL}]';
    for (const generic of ['phenelzine', 'nortriptyline', 'propranolol']) {
      const { findings } = judge(note(`medications: [${nameOf(generic)} 15 mg]`, procedure));
      assert.ok(
        findings.some(({ args }) => args['name'] === generic),
        generic,
      );
    }
  });

  it('of an anesthetic give neither strength nor epinephrine', () => {
    const { findings, dose } = judge(
      note('allergies: none', `anesthetic: [{agent: ${nameOf('mepivacaine')}, volume: 2 mL}]`),
    );
    assert.equal(dose?.judged, false);
    assert.ok(findings.some(({ code }) => code.startsWith('dose/') || code.startsWith('record/')));
    const whole = judge(
      note(
        'allergies: none',
        `anesthetic: [{agent: ${nameOf('mepivacaine')}, concentration: 1%, volume: 2 mL}]`,
      ),
    );
    assert.deepEqual(
      whole.dose?.agents.map(({ agent, epinephrine, mg }) => ({ agent, epinephrine, mg })),
      [{ agent: 'mepivacaine', epinephrine: false, mg: 20 }],
    );
  });

  it('of the practice count in maps and in dictated lines', () => {
    const tables = tablesOf(readPractice('trade-names: {Blue vial: lidocaine}\n').value);
    for (const anesthetic of ['{agent: Blue vial, concentration: 1%, volume: 2 mL}', '2 mL blue vial 1%']) {
      const text = note('allergies: [Blue vial]', `anesthetic: [${anesthetic}]`);
      const { findings, dose } = judge(text, { tables });
      assert.deepEqual(
        dose?.agents.map(({ agent, mg }) => ({ agent, mg })),
        [{ agent: 'lidocaine', mg: 20 }],
        anesthetic,
      );
      assert.ok(findings.some(({ code, severity }) => code === 'allergy/agent' && severity === 'error'));
    }
  });

  it('of an allergy are seen where they are misspelt, and asked about by the generic word', () => {
    for (const generic of ['articaine', 'triple antibiotic ointment']) {
      const name = nameOf(generic);
      const typed = name.slice(0, 3) + name.slice(4);
      const { findings } = judge(note(`allergies: [${typed}]`, 'dressing: [petrolatum]'));
      const unclear = findings.find(({ code }) => code === 'allergy/unclear-entry');
      assert.equal(unclear?.severity, 'warning', typed);
      assert.doesNotMatch(messageOf(unclear), new RegExp(name, 'i'));
    }
    const articaine = nameOf('articaine');
    flags(
      'allergy/agent',
      note(
        `allergies: [${articaine.slice(0, 3)}${articaine.slice(4)}]`,
        'anesthetic: [{agent: ⟦articaine⟧, concentration: 4%, volume: 1 mL}]',
      ),
      { severity: 'error' },
    );
  });
});
