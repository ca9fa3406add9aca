import assert from 'node:assert/strict';
import { floorTo, isOver } from '../../src/dose/arithmetic.ts';
import { ceilingBy } from '../../src/limits/ceilings.ts';
import { judgeDose } from '../../src/dose/judge.ts';
import { readNote } from '../../src/note/read.ts';
import { referenceTables, type Tables } from '../../src/practice/tables.ts';
import { doseOf, most } from './notes.ts';

/** The limit that an authority publishes, for the arithmetic of worked examples that follow it. */
function limitMg(agent: string, authority: string, kg: number, epinephrine = false, months = 480): number {
  const row = referenceTables.limits.find(
    (one) =>
      one.agent === agent &&
      one.authority === authority &&
      one.epinephrine === epinephrine &&
      months >= (one.population.fromMonths ?? 0) &&
      months < (one.population.belowMonths ?? Infinity),
  );
  assert.ok(row !== undefined, `${authority} has no row for ${agent}`);
  return ceilingBy(row, kg).limitMg;
}

const near = (actual: number, expected: number, room = 1e-9): void => {
  assert.ok(Math.abs(actual - expected) <= room, `${actual} is not ${expected}`);
};

const lb = 0.45359237;
/** Tables whose only limits are bare mg/kg, in the way of a practice's own rules. */
const ruledBy = (mgPerKg: Readonly<Record<string, number>>): Tables => ({
  ...referenceTables,
  limits: Object.entries(mgPerKg).map(([agent, one]) => ({
    agent,
    epinephrine: false,
    authority: 'x',
    population: { text: 'any age' },
    mgPerKg: one,
    practice: 'approved',
    source: 'practice-file',
    mark: 'format',
    asOf: '2026',
  })),
});

/** The maximum by a bare mg/kg. */
const own = (agent: string, mgPerKg: number, kg: number): number => {
  const tables = ruledBy({ [agent]: mgPerKg });
  const text = `visit: 2026-03-02\npatient: {id: C-1, age: 40 years, weight: ${kg} kg}\nanesthetic: {agent: ${agent}, concentration: 1%, volume: 1 mL}\nprocedures: []\n`;
  return judgeDose(readNote(text).value!, tables).agents[0]!.limitMg;
};

describe('published figures', () => {
  describe('US prescribing information', () => {
    // Lidocaine HCl injection, maximum recommended dosages (openFDA label record).
    it('lidocaine plain: 4.5 mg/kg, not above 300 mg', () => {
      assert.equal(most('lidocaine', 10, { kg: 62 }).maxMg, 279);
      assert.equal(most('lidocaine', 10, { kg: 62 }).maxMl, 27.9);
      const heavy = most('lidocaine', 10, { kg: 90 });
      assert.deepEqual([heavy.maxMg, heavy.maxMl, heavy.boundBy], [300, 30, 'cap']);
    });

    it('lidocaine with epinephrine: 7 mg/kg, not above 500 mg', () => {
      assert.equal(most('lidocaine', 10, { kg: 62, epinephrine: 10 }).maxMg, 434);
      assert.equal(most('lidocaine', 10, { kg: 80, epinephrine: 10 }).maxMg, 500);
    });

    // The same label prints 7 mg/kg also as 3.5 mg/lb, others as 3.2 mg/lb; exact is 3.175 mg/lb.
    it('150 lb with epinephrine: 476.27 mg, not the 525 mg of 3.5 mg/lb nor the 480 mg of 3.2 mg/lb', () => {
      const { agents } = doseOf(
        ['agent: lidocaine, concentration: 1%, epinephrine: "1:100,000", volume: 1 mL'],
        {
          patient: 'id: C-1, age: 40 years, weight: 150 lb',
        },
      );
      near(agents[0]!.limitMg, 150 * lb * 7);
      assert.equal(floorTo(agents[0]!.limitMg, 0.01), 476.27);
    });

    // W01: child of 5 years, 50 lb: 75 to 100 mg; the BNF for Children has 3 mg/kg = 68 mg.
    it('the example of 75 to 100 mg at 50 lb lies above what counts for a child here', () => {
      const child = most('lidocaine', 10, { kg: 50 * lb, months: 60 });
      assert.equal(child.maxMg, 68.03);
    });

    // W39: Table 1 prints 0.5% or 1%, 1 to 60 mL, 5 to 300 mg: 60 mL is 300 mg of the weaker one only.
    it('60 mL are 300 mg of 0.5% and 600 mg of 1%', () => {
      const heavy = 'id: C-1, age: 40 years, weight: 90 kg';
      const weak = doseOf(['agent: lidocaine, concentration: 0.5%, volume: 60 mL'], { patient: heavy });
      const strong = doseOf(['agent: lidocaine, concentration: 1%, volume: 60 mL'], { patient: heavy });
      assert.equal(weak.agents[0]!.mg, 300);
      assert.equal(weak.fraction, 1);
      assert.equal(strong.agents[0]!.mg, 600);
      assert.equal(strong.fraction, 2);
    });

    // W44: lidocaine topical solution 4%, 1 to 5 mL: 40 to 200 mg.
    it('5 mL of 4% are 200 mg, which is 3 mg/kg at 66.7 kg', () => {
      const { agents } = doseOf(['agent: lidocaine, concentration: 4%, volume: 5 mL'], {
        patient: 'id: C-1, age: 40 years, weight: 66.7 kg',
      });
      near(agents[0]!.mg, 200);
      near(agents[0]!.mgPerKg!, 3, 0.002);
    });

    // Articaine 4% with epinephrine, dosage and administration. W02, W03, W48.
    it('articaine: 7 mg/kg = 0.175 mL/kg; 150 lb have 11.907 mL, so 11.9 and never 12.0 mL', () => {
      const { maxMl, limitMg: limit } = most('articaine', 40, { kg: 150 * lb, epinephrine: 10 });
      assert.equal(maxMl, 11.9);
      near(limit / 40, 11.907, 0.001);
      near(most('articaine', 40, { kg: 100, epinephrine: 10 }).limitMg / 40 / 100, 0.175);
    });

    it('articaine: 0.5 to 2.5 mL are 20 to 100 mg, 1.0 to 5.1 mL are 40 to 204 mg', () => {
      const mg = (ml: number): number =>
        doseOf([`agent: articaine, concentration: 4%, epinephrine: "1:100,000", volume: ${ml} mL`]).agents[0]!
          .mg;
      [
        [0.5, 20],
        [2.5, 100],
        [1, 40],
        [5.1, 204],
      ].forEach(([ml, wanted]) => {
        near(mg(ml!), wanted!);
      });
    });

    it('articaine has no limit under 4 years', () => {
      assert.throws(
        () => most('articaine', 40, { kg: 14, months: 40, epinephrine: 10 }),
        /no limit is known/,
      );
    });

    // Chloroprocaine HCl injection, dosage.
    it('chloroprocaine: 11 mg/kg up to 800 mg; with epinephrine 14 mg/kg up to 1000 mg', () => {
      assert.equal(most('chloroprocaine', 10, { kg: 60 }).maxMg, 660);
      assert.equal(most('chloroprocaine', 10, { kg: 80 }).maxMg, 800);
      assert.equal(most('chloroprocaine', 10, { kg: 60, epinephrine: 5 }).maxMg, 840);
      assert.equal(most('chloroprocaine', 10, { kg: 80, epinephrine: 5 }).maxMg, 1000);
    });

    // Bupivacaine: 175 mg, 225 mg with epinephrine (label; Poisoning & Drug Overdose, WikEM).
    it('bupivacaine: 175 and 225 mg, and less for a light patient', () => {
      assert.equal(most('bupivacaine', 2.5, { kg: 90 }).maxMg, 175);
      assert.equal(most('bupivacaine', 2.5, { kg: 90, epinephrine: 5 }).maxMg, 225);
      assert.equal(most('bupivacaine', 2.5, { kg: 40, months: 480 }).maxMg, 100);
      assert.equal(most('bupivacaine', 2.5, { kg: 40, months: 480, epinephrine: 5 }).maxMg, 120);
    });

    // Mepivacaine: 400 mg in one procedure.
    it('mepivacaine: 400 mg, and 7 mg/kg for a light patient', () => {
      assert.equal(most('mepivacaine', 10, { kg: 70 }).maxMg, 400);
      assert.equal(most('mepivacaine', 10, { kg: 50 }).maxMg, 350);
    });

    // W04: mepivacaine dental, 5.3 cartridges of 1.7 mL.
    it('9.01 mL of mepivacaine are 180 mg of 2% and 270 mg of 3%', () => {
      const mg = (strength: string): number =>
        doseOf([`agent: mepivacaine, concentration: ${strength}, volume: 9.01 mL`]).agents[0]!.mg;
      near(mg('2%'), 180.2);
      near(mg('3%'), 270.3);
    });

    // W05, W06: the table of the mepivacaine dental label (3 mg/lb) contradicts the label's own formula.
    it('20 and 30 lb: 60 and 90 mg by 3 mg/lb, 53.3 and 80 mg by weight/150 × 400 mg', () => {
      const perKg = 3 / lb;
      near(own('mepivacaine', perKg, 20 * lb), 60, 1e-6);
      near(own('mepivacaine', perKg, 30 * lb), 90, 1e-6);
      assert.ok(own('mepivacaine', perKg, 20 * lb) > (20 / 150) * 400);
      // Cartridges of 1.7 mL: counts are cut, so that 2.647 is 2.6 and 1.176 is 1.1, where the label prints 1.2.
      assert.equal(floorTo(90 / 20 / 1.7, 0.1), 2.6);
      assert.equal(floorTo(60 / 30 / 1.7, 0.1), 1.1);
      assert.equal(floorTo(60 / 20 / 1.7, 0.1), 1.7);
    });
  });

  describe('formularies and labels of other countries', () => {
    // W36: BNF for Children 2018-2019, lidocaine, infiltration.
    it('BNF for Children: 3 mg/kg = 0.3 mL/kg of 1%', () => {
      const { maxMl, limit } = most('lidocaine', 10, { kg: 20, months: 72 });
      assert.equal(maxMl, 6);
      assert.equal(limit.authority, 'BNF for Children');
    });

    // HPRA and UK summaries of product characteristics, 4.2.
    it('UK and Ireland: 4.5 mg/kg, not above 200 mg', () => {
      assert.equal(most('lidocaine', 20, { kg: 70, authority: 'UK' }).maxMg, 200);
      assert.equal(most('lidocaine', 20, { kg: 40, months: 480, authority: 'UK' }).maxMg, 180);
    });

    // Therapeutic Guidelines (Australia): Toxicology.
    it('Australia: lidocaine 3 mg/kg, 7 mg/kg with adrenaline; bupivacaine 2 mg/kg either way', () => {
      assert.equal(most('lidocaine', 10, { kg: 70, authority: 'Australia' }).maxMg, 210);
      assert.equal(most('lidocaine', 10, { kg: 70, authority: 'Australia', epinephrine: 10 }).maxMg, 490);
      assert.equal(most('bupivacaine', 2.5, { kg: 70, authority: 'Australia' }).maxMg, 140);
      assert.equal(most('bupivacaine', 2.5, { kg: 70, authority: 'Australia', epinephrine: 5 }).maxMg, 140);
    });

    // Poisoning & Drug Overdose, Table II-2.
    it('levobupivacaine 2 mg/kg, 150 mg at one time; prilocaine 6 mg/kg or 400 mg; ropivacaine 200 mg', () => {
      assert.equal(most('levobupivacaine', 2.5, { kg: 60 }).maxMg, 120);
      // UK medicines reference: 150 mg as a single dose.
      assert.equal(most('levobupivacaine', 2.5, { kg: 110 }).maxMg, 150);
      assert.equal(most('levobupivacaine', 2.5, { kg: 110, epinephrine: 5 }).maxMg, 150);
      assert.equal(most('prilocaine', 40, { kg: 60 }).maxMg, 360);
      assert.equal(most('prilocaine', 40, { kg: 70 }).maxMg, 400);
      assert.equal(most('ropivacaine', 5, { kg: 70 }).maxMg, 200);
      // The table lists no increase with epinephrine.
      assert.equal(most('ropivacaine', 5, { kg: 90, epinephrine: 5 }).maxMg, 200);
    });

    // Poisoning & Drug Overdose prints no value with epinephrine; WikEM has 10 mg/kg for procaine.
    it('no more with epinephrine where a reference table lists no more: procaine, ropivacaine', () => {
      for (const agent of ['procaine', 'ropivacaine'])
        assert.equal(most(agent, 10, { kg: 90, epinephrine: 5 }).maxMg, most(agent, 10, { kg: 90 }).maxMg);
    });

    // UK summary of product characteristics, mepivacaine 3% plain: 4.4 mg/kg, 300 mg; from 4 years.
    it('mepivacaine: 4.4 mg/kg, not above 300 mg where the UK label counts; none under 4 years', () => {
      assert.equal(most('mepivacaine', 30, { kg: 60, authority: 'UK' }).maxMg, 264);
      assert.equal(most('mepivacaine', 30, { kg: 90, authority: 'UK' }).maxMg, 300);
      assert.equal(most('mepivacaine', 10, { kg: 18, months: 60 }).maxMg, 54);
      assert.throws(() => most('mepivacaine', 10, { kg: 14, months: 36 }), /no limit is known/);
    });

    // US label, mepivacaine 2% with levonordefrin: 3 mg/lb, 400 mg; children weight in lb / 150 of 400 mg, 180 mg.
    it('mepivacaine with levonordefrin: 6.6 mg/kg up to 400 mg; a child of 50 lb 131 mg', () => {
      const agent = 'mepivacaine with levonordefrin';
      assert.equal(most(agent, 20, { kg: 50 }).maxMg, 330);
      assert.equal(most(agent, 20, { kg: 70 }).maxMg, 400);
      const child = most(agent, 20, { kg: 50 * lb, months: 96 });
      assert.ok(child.maxMg <= (50 / 150) * 400 && child.maxMg > 131);
      assert.equal(most(agent, 20, { kg: 45, months: 150 }).maxMg, 180);
    });

    it('a young patient has no more than an adult of that weight', () => {
      // Canadian table 8 mg/kg up to 500 mg at any age; adults have 6 mg/kg up to 400 mg.
      assert.equal(most('prilocaine', 40, { kg: 90, months: 200 }).maxMg, 400);
      assert.equal(most('prilocaine', 40, { kg: 30, months: 120 }).maxMg, 180);
      assert.throws(() => most('ropivacaine', 5, { kg: 110, months: 204 }), /no limit is known/);
    });

    // W41: mepivacaine 3%, chiropody and dental.
    it('2.2, 4, 4.4 and 6.6 mL of mepivacaine 3% are 66, 120, 132 and 198 mg', () => {
      [
        [2.2, 66],
        [4, 120],
        [4.4, 132],
        [6.6, 198],
      ].forEach(([ml, mg]) => {
        near(doseOf([`agent: mepivacaine, concentration: 3%, volume: ${ml} mL`]).agents[0]!.mg, mg!);
      });
    });

    // W42: 0.75 and 3 mg/kg are 0.025 and 0.1 mL/kg of 3%.
    it('0.75 and 3 mg/kg of mepivacaine 3% are 0.025 and 0.1 mL/kg', () => {
      near(own('mepivacaine', 0.75, 20) / 30 / 20, 0.025);
      near(own('mepivacaine', 3, 20) / 30 / 20, 0.1);
    });
  });

  describe('worked examples', () => {
    // W07: PMC9379193 Table 1: 20 kg, lidocaine 2%, 7 mg/kg: 140 mg, 7 mL, and 3.9 cartridges of 1.8 mL.
    it('20 kg, 2% with vasoconstrictor: 140 mg, 7 mL; 3.9 cartridges are rounded up past the limit', () => {
      const { maxMg, maxMl } = most('lidocaine', 20, { kg: 20, months: 72, epinephrine: 10 });
      assert.deepEqual([maxMg, maxMl], [140, 7]);
      assert.ok(3.9 * 1.8 * 20 > maxMg);
      assert.equal(floorTo(maxMg / 20 / 1.8, 0.1), 3.8);
    });

    // W09: ABC of Practical Procedures, Box 4.1.
    it('75 kg, bupivacaine 0.5%, 2 mg/kg: 150 mg, 30 mL', () => {
      assert.equal(limitMg('bupivacaine', 'ABC of Practical Procedures', 75), 150);
      assert.equal(floorTo(150 / 5, 0.1), 30);
    });

    // W11, W13, W15: Emergency Medicine Educational Pearls 2023.
    it('a child of 20 kg: 8 mL of 1% and 4 mL of 2% lidocaine; 24 mL of bupivacaine 0.25% with epinephrine', () => {
      const pearls = 'Emergency Medicine Educational Pearls';
      assert.equal(floorTo(limitMg('lidocaine', pearls, 20, false, 72) / 10, 0.1), 8);
      assert.equal(floorTo(limitMg('lidocaine', pearls, 20, false, 72) / 20, 0.1), 4);
      assert.equal(floorTo(limitMg('bupivacaine', pearls, 20, true, 72) / 2.5, 0.1), 24);
    });

    // W20, W23, W25: podiatry slides, lidocaine 3 mg/kg; W21, W26: mepivacaine 6 mg/kg.
    it('3 mg/kg at 70, 68 and 44 kg: 210, 204 and 132 mg; 6 mg/kg at 50 and 63 kg: 300 and 378 mg', () => {
      [
        [70, 210],
        [68, 204],
        [44, 132],
      ].forEach(([kg, mg]) => {
        near(own('lidocaine', 3, kg!), mg!);
      });
      [
        [50, 300],
        [63, 378],
      ].forEach(([kg, mg]) => {
        near(own('mepivacaine', 6, kg!), mg!);
      });
    });

    // W28, W30: podiatry slides, weight capped at 70 kg. The kg-used method is the sum of fractions.
    it('132 mg of mepivacaine leave 288 mg; 192 mg use up 32 of 70 kg and leave 114 mg of lidocaine', () => {
      const asked = {
        patient: 'id: C-1, age: 40 years, weight: 70 kg',
        tables: ruledBy({ mepivacaine: 6, lidocaine: 3 }),
      };
      const mepivacaine = (ml: number): string => `agent: mepivacaine, concentration: 2%, volume: ${ml} mL`;
      const lidocaine = (ml: number): string => `agent: lidocaine, concentration: 1%, volume: ${ml} mL`;
      near(doseOf([mepivacaine(6.6)], asked).left[0]!.mg, 288);
      assert.equal(isOver(doseOf([mepivacaine(9.6), lidocaine(11.4)], asked).fraction!, 1), false);
      assert.equal(isOver(doseOf([mepivacaine(9.6), lidocaine(11.5)], asked).fraction!, 1), true);
    });

    // W46: an expert's answer, 2016: of A with 3 mg/kg and B a quarter as potent, A + B/4 stays under 3 mg/kg.
    it('1.5 mg/kg of one and 6 mg/kg of another a quarter as potent are 3 mg/kg of the first', () => {
      const { fraction } = doseOf(
        [
          'agent: lidocaine, concentration: 1%, volume: 10.5 mL',
          'agent: mepivacaine, concentration: 2%, volume: 21 mL',
        ],
        {
          patient: 'id: C-1, age: 40 years, weight: 70 kg',
          tables: ruledBy({ lidocaine: 3, mepivacaine: 12 }),
        },
      );
      near(fraction!, (1.5 + 6 / 4) / 3);
    });

    // W32: the slides print 204 + 20 = 230 mg.
    it('204 mg and 20 mg are 224 mg, over 210 mg', () => {
      const { agents } = doseOf([
        'agent: lidocaine, concentration: 1%, volume: 20.4 mL',
        'agent: lidocaine, concentration: 1%, volume: 2 mL',
      ]);
      near(agents[0]!.mg, 224);
    });

    // W33: a hand-out prints 70 × 7 = 499 mg and 13.8 cartridges of 36 mg.
    it('70 kg × 7 mg/kg is 490 mg, and 13.6 cartridges of 36 mg', () => {
      const { maxMg } = most('lidocaine', 20, { kg: 70, epinephrine: 10 });
      assert.equal(maxMg, 490);
      assert.equal(floorTo(maxMg / 36, 0.1), 13.6);
    });

    // W35: a page of questions and answers.
    it('2 cartridges of 1.8 mL of 2% are 72 mg', () => {
      near(doseOf(['agent: lidocaine, concentration: 2%, volume: 3.6 mL']).agents[0]!.mg, 72);
    });
  });

  describe('epinephrine', () => {
    const micrograms = (ratio: string, ml: number): number =>
      doseOf([`agent: lidocaine, concentration: 1%, epinephrine: "${ratio}", volume: ${ml} mL`])
        .epinephrineMicrograms;

    // W37: clinical pharmacology notes; W38: student hand-out; W19: dental hygiene journal, 9 µg in 1.8 mL of 1:200,000.
    it('500 µg are 100 mL of 1:200,000; 1.8 mL of 1:80,000 hold 22.5 µg, of 1:200,000 9 µg', () => {
      near(micrograms('1:200,000', 100), 500);
      near(micrograms('1:80,000', 1.8), 22.5);
      near(micrograms('1:200,000', 1.8), 9);
    });

    // Student hand-out: 1:80,000 = 12.5, 1:100,000 = 10, 1:200,000 = 5 µg/mL; clinical pharmacology notes: 1:1,000 = 1 mg/mL.
    it('ratios as µg in a mL', () => {
      [
        ['1:1,000', 1000],
        ['1:50,000', 20],
        ['1:80,000', 12.5],
        ['1:100,000', 10],
        ['1:200,000', 5],
      ].forEach(([ratio, wanted]) => {
        near(micrograms(String(ratio), 1), Number(wanted));
      });
    });

    // 200 µg (dental course): 20 mL of 1:100,000, 40 mL of 1:200,000; 40 µg (cards): 4 and 8 mL.
    it('the dental maxima as volumes', () => {
      near(micrograms('1:100,000', 20), 200);
      near(micrograms('1:200,000', 40), 200);
      near(micrograms('1:100,000', 4), 40);
      near(micrograms('1:200,000', 8), 40);
    });
  });

  // Compend Contin Educ Dent 2016;37(5): mixtures of 9:1; guideline: 1 part to 9 or 10.
  it('9 mL of 1% and 1 mL of bicarbonate are 10 mL of 0.9%; 10 and 1 are 0.909%', () => {
    const mg = (parts: string): number =>
      doseOf([`agent: lidocaine, concentration: 1%, buffered: ${parts}, volume: 10 mL`]).agents[0]!.mg;
    near(mg('9:1'), 90);
    near(mg('10:1'), 100 / 1.1);
  });
});
