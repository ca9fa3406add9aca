import assert from 'node:assert/strict';
import { check } from '../../src/checks/index.ts';
import { readNote, readPractice } from '../../src/note/read.ts';
import { referenceTables, tablesOf, type Tables } from '../../src/practice/tables.ts';
import { tradeNames } from '../../src/reference/trade-names.ts';
import { summaryOf } from '../../src/documents/summary/summary.ts';

const nameOf = (generic: string): string => {
  const found = tradeNames.find((one) => one.generic === generic);
  assert.ok(found, `a trade name for ${generic}`);
  return found.name;
};

/** All that the summary of a note says of patient and procedures. */
function summarized(patient: string, procedure: string, tables: Tables = referenceTables): string {
  const text = `visit: 2026-03-02\npatient: {id: C-1, born: 1961-08-09, weight: 62 kg, ${patient}}\nprocedures:\n  - site: left cheek\n    method: punch\n    ${procedure}\n`;
  const source = readNote(text);
  const context = { tables, today: '2026-03-02' };
  return JSON.stringify(summaryOf(source, check(source, context), { ...context, practice: undefined }));
}

describe('a trade name in the summary', () => {
  it('is the generic word, and what was typed', () => {
    for (const [generic, patient, procedure] of [
      ['articaine', '', (name: string) => `anesthetic: [{agent: ${name}, concentration: 4%, volume: 1 mL}]`],
      ['warfarin', (name: string) => `medications: [${name}]`, ''],
      ['mepivacaine', (name: string) => `allergies: [${name}]`, ''],
      ['double antibiotic ointment', '', (name: string) => `dressing: [${name}, gauze]`],
    ] as const) {
      const name = nameOf(generic);
      const made = summarized(
        patient === '' ? 'implants: none' : patient(name),
        procedure === '' ? 'photo: yes' : procedure(name),
      );
      assert.match(made, new RegExp(`${generic} \\(typed: ${name}\\)`), generic);
    }
  });

  it('keeps the words beside it, and every generic word as it was typed', () => {
    const name = nameOf('double antibiotic ointment');
    assert.match(
      summarized('implants: none', `dressing: thin ${name} and gauze`),
      new RegExp(`thin double antibiotic ointment \\(typed: ${name}\\) and gauze`),
    );
    const plain = summarized('medications: [warfarin]', 'dressing: [bacitracin, gauze]');
    assert.doesNotMatch(plain, /typed:/);
  });

  it('of a practice is read the same way', () => {
    const tables = tablesOf(readPractice('trade-names: {Blue vial: lidocaine}\n').value);
    assert.match(
      summarized(
        'implants: none',
        'anesthetic: [{agent: Blue vial, concentration: 1%, volume: 1 mL}]',
        tables,
      ),
      /lidocaine \(typed: Blue vial\)/,
    );
  });
});
