import assert from 'node:assert/strict';
import { flags, judge, silent } from './tester.ts';

const note = (patient: string, all: string, ...procedures: readonly string[]): string =>
  `visit: 2026-03-02\npatient: {${patient}}\nfor-all: {${all}}\nprocedures:\n` +
  procedures.map((one) => `  - ${one}\n`).join('');

const back = '{site: left upper back, method: shave, specimen: {label: A}}';
const calf = '{site: right calf, method: shave, specimen: {label: B}}';
const frozen = '{site: left ear, method: cryotherapy}';

describe('a value under for-all', () => {
  it('is judged for the procedures that take it over, and reported once, at its place', () => {
    flags('allergy/dressing', note('allergies: [bacitracin]', 'dressing: ⟦bacitracin⟧', back, calf), {
      severity: 'error',
    });
    flags(
      'specimen/wrong-medium',
      note('id: C-1', 'specimen: {medium: ⟦formalin⟧, tests: DIF}', back, calf),
      {
        severity: 'error',
      },
    );
    flags('shape/unknown-word', note('id: C-1', 'specimen: {medium: ⟦porridge⟧}', back, calf));
  });

  it('is judged for none that says otherwise or takes no tissue', () => {
    const own = '{site: left upper back, method: shave, dressing: petrolatum, specimen: {label: A}}';
    const all = 'dressing: bacitracin';
    silent('allergy/dressing', note('allergies: [bacitracin]', all, own, frozen));
  });

  it('leaves each finding in the procedures as it is', () => {
    const hairy = 'site: left scalp, method: shave, hemostasis: electrosurgery, specimen: {label: A}';
    const found = judge(
      note('id: C-1', 'preparation: isopropyl alcohol', `{${hairy}}`, `{${hairy.replace('A', 'B')}}`),
    ).findings;
    assert.equal(found.filter(({ code }) => code === 'hemostasis/fire').length, 2);
  });

  it('is not asked for again in the procedures', () => {
    const all = 'dressing: petrolatum, specimen: {medium: formalin}';
    for (const code of ['record/missing-dressing', 'specimen/medium-missing'])
      silent(code, note('id: C-1', all, back, calf));
    flags('specimen/missing', note('id: C-1', all, '{⟦site⟧: left ear, method: shave}'));
    flags(
      'record/missing-dressing',
      note('id: C-1', 'preparation: none', `{⟦site${back.slice(5)}`.replace('site:', 'site⟧:')),
    );
  });
});
