import assert from 'node:assert/strict';
import fc from 'fast-check';
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
    assert.match(words(alone), /Other notes of this patient and day were not checked/);
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

  it('gives for many notes of one day what adding up one by one gives', () => {
    const doses = ['1 mL', '2.5 mL', '0.1 mL', '??'].flatMap((volume) =>
      ['', ', epinephrine: 1:100,000'.replace('1:100,000', '"1:100,000"')].map((more) =>
        judgeDose(
          readNote(text.replace('volume: 10 mL', `volume: ${volume}${more}`)).value!,
          referenceTables,
        ),
      ),
    );
    const entry = fc.tuple(fc.integer({ min: 0, max: 12 }).map(String), fc.constantFrom(...doses));
    fc.assert(
      fc.property(fc.array(entry, { maxLength: 30 }), fc.integer({ min: 0, max: 14 }), (entries, own) => {
        const days = new DayDoses();
        for (const [path, dose] of entries) days.add(path, 'C-1', dose);
        const others = entries.filter(([path]) => path !== String(own));
        const given = others.flatMap(([, dose]) => dose.given);
        const found = days.besides(String(own), 'c-1', '2026-03-02');
        assert.equal(found.notes, new Set(others.map(([path]) => path)).size);
        assert.equal(
          found.unjudged,
          others.some(([, dose]) => dose.unread.length > 0),
        );
        assert.deepEqual([...found.given].map(({ mg }) => mg).sort(), given.map(({ mg }) => mg).sort());
        for (const epinephrine of [false, true]) {
          const mg = given
            .filter((one) => one.withEpinephrine === epinephrine)
            .reduce((sum, one) => sum + one.mg, 0);
          const sum = found.sums.find((one) => one.epinephrine === epinephrine)?.mg ?? 0;
          assert.ok(Math.abs(sum - mg) < 1e-9, `${sum} ${mg}`);
        }
        const micrograms = given.reduce((sum, one) => sum + one.epinephrineMicrograms, 0);
        assert.ok(Math.abs(found.epinephrineMicrograms - micrograms) < 1e-9);
      }),
    );
  });

  it('is quick where thousands of notes are of one patient and day', () => {
    const days = new DayDoses();
    const dose = judgeDose(note, referenceTables);
    let asked = 0;
    const counted = {
      ...dose,
      get given() {
        asked += 1;
        return dose.given;
      },
    };
    const paths = Array.from({ length: 3000 }, (_, at) => String(at));
    for (const path of paths) days.add(path, 'C-1', counted);
    for (const path of paths) assert.equal(days.besides(path, 'C-1', '2026-03-02').sums[0]?.mg, 299_900);
    // Each note is looked at once, not once for each other one.
    assert.ok(asked <= paths.length, String(asked));
  });
});
