import assert from 'node:assert/strict';
import { judgeDose } from '../../src/dose/judge.ts';
import { readNote, readPractice } from '../../src/note/read.ts';
import { tablesOf, type Trust } from '../../src/practice/tables.ts';

/** The limit in mg that a practice's file leaves for plain lidocaine. */
function limitMg(limits: string, patient: string, trust?: Trust): number | undefined {
  const { value } = readNote(
    `visit: 2026-03-02\npatient: {id: C-1, ${patient}}\nprocedures: [{site: left ear, anesthetic: {agent: lidocaine, concentration: 1%, volume: 1 mL}}]\n`,
  );
  assert.ok(value);
  const practice = readPractice(limits === '' ? 'wheal: 1\n' : `limits: [{agent: lidocaine, ${limits}}]\n`);
  return judgeDose(value, tablesOf(practice.value, trust)).agents[0]?.limitMg;
}

const near = (got: number | undefined, wanted: number): void => {
  assert.ok(got !== undefined && Math.abs(got - wanted) < 1e-6, `${got} is not ${wanted}`);
};

const adult = 'age: 64 years, weight: 62 kg';
const child = 'age: 6 years, weight: 20 kg';
const approved = 'approved: {by: K.O., on: 2026-01-05, reason: invented for this test}';

describe('limits of the practice in a dose', () => {
  it('tighten the ceiling', () => {
    // US label: 4.5 mg/kg and at most 300 mg.
    near(limitMg('', adult), 279);
    near(limitMg('max-mg-per-kg: 3', adult), 186);
    near(limitMg('max-mg: 200', adult), 200);
    near(limitMg('max-mg-per-kg: 3', adult, { trusted: false }), 186);
  });

  it('loosen nothing without an approval or in restricted mode', () => {
    near(limitMg('max-mg-per-kg: 6', adult), 279);
    near(limitMg(`max-mg-per-kg: 6, ${approved}`, adult, { trusted: false }), 279);
  });

  it('loosen with an approval, and keep the cap that was not loosened', () => {
    near(limitMg(`max-mg-per-kg: 6, max-mg: 400, ${approved}`, adult), 372);
    near(limitMg(`max-mg-per-kg: 6, ${approved}`, adult), 300);
  });

  it('approved for adults do not reach a child', () => {
    // BNF for Children: 3 mg/kg.
    near(limitMg('', child), 60);
    near(limitMg(`max-mg-per-kg: 6, ${approved}`, child), 60);
    near(limitMg('max-mg-per-kg: 2', child), 40);
  });
});
