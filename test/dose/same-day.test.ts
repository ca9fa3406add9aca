import assert from 'node:assert/strict';
import { DayDoses } from '../../src/dose/day-doses.ts';
import { judgeDose } from '../../src/dose/judge.ts';
import { readNote } from '../../src/note/read.ts';
import { referenceTables } from '../../src/practice/tables.ts';
import type { DoseJudgement } from '../../src/dose/types.ts';

const text = `visit: 2026-03-02
patient: {id: C-1, born: 1961-08-09, weight: 62 kg}
procedures: [{site: chin, anesthetic: [{agent: lidocaine, concentration: 1%, volume: 10 mL}]}]
`;
const note = readNote(text).value!;
const words = ({ steps }: DoseJudgement): string => steps.map((step) => step.text).join('\n');

describe('dose of a day with other notes', () => {
  it('says that others were not looked at, without judging them', () => {
    const alone = judgeDose(note, referenceTables);
    assert.match(words(alone), /Other notes of this patient and day were not looked at/);
    assert.equal(alone.judged, true);
  });

  it('adds what others gave to the sum, and shows each of them', () => {
    const days = new DayDoses();
    days.add('a', 'C-1', judgeDose(note, referenceTables));
    days.add('b', 'c-1', judgeDose(note, referenceTables));
    const both = judgeDose(note, referenceTables, (day) => days.besides('a', 'C-1', day));
    assert.equal(both.agents[0]?.mg, 200);
    assert.equal(both.given.length, 1);
    assert.match(words(both), /Another note of that day, .*10 mL = 100 mg/);
    assert.doesNotMatch(words(both), /not looked at/);
  });
});
