import assert from 'node:assert/strict';
import { fixed, flags, silent } from '../tester.ts';

const note = (remarks: string, patient = 'id: C-1'): string =>
  `visit: 2026-03-02\npatient: {${patient}}\nprocedures:\n  - site: chin\n    method: shave\n    question: r/o HS vs AD vs SCC\n    remarks: ${remarks}\n`;

/** Each abbreviation is on the published list of the Institute for Safe Medication Practices. */
describe('record/misread-abbreviation', () => {
  const code = 'record/misread-abbreviation';

  for (const [typed, instead] of [
    ['petrolatum ⟦QD⟧ for a week', 'daily'],
    ['petrolatum ⟦q.d.⟧ for a week', 'daily'],
    ['dressing ⟦qod⟧', 'every other day'],
    ['doxepin ⟦qhs⟧', 'at bedtime'],
    ['10 ⟦IU⟧ given', 'units'],
    ['10⟦U⟧ given', 'units'],
    ['2 ⟦cc⟧ drawn', 'mL'],
    ['antibiotic ⟦per os⟧', 'by mouth'],
    ['heparin ⟦SQ⟧', 'subcutaneous'],
  ] as const)
    it(`${typed}: ${instead}`, () => {
      flags(code, note(typed), { severity: 'information' });
      const text = note(typed.replace(/[⟦⟧]/g, ''));
      assert.equal(fixed(code, text, instead), note(typed.replace(/⟦.*⟧/, instead)));
    });

  it('offers both words where only the writer knows which is meant', () => {
    const text = note('d/c ointment');
    flags(code, note('⟦d/c⟧ ointment'));
    assert.match(fixed(code, text, 'discontinue'), /discontinue ointment/);
    assert.match(fixed(code, text, 'discharge'), /discharge ointment/);
  });

  it('finds them in medicines, in sites and in later events', () => {
    flags(code, note('none', 'id: C-1, medications: [prednisone 10 mg ⟦QD⟧]'));
    flags(code, note('none').replace('chin', 'upper eyelid ⟦OS⟧'));
    flags(
      code,
      `${note('none')}events:\n  - {on: 2026-03-03, kind: bleeding, action: pressed, ointment: none}\n`.replace(
        'action: pressed, ointment: none',
        'action: ointment ⟦QD⟧',
      ),
    );
  });

  it('is silent on words that hold them, on what means a skin disease, and on units that are written out', () => {
    for (const words of [
      'AS, AD, HS and SCC are the differential',
      'equal borders, quad muscle, occult',
      'MOST of it, OSTEOMA, code OD-12',
      '10 units, daily, 2 mL',
      'unit 4 upstairs',
      'tetracaine',
    ])
      silent(code, note(words));
  });
});
