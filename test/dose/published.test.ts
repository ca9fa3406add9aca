import assert from 'node:assert/strict';
import { floorTo } from '../../src/dose/arithmetic.ts';
import { doseOf, most } from './notes.ts';

const near = (actual: number, expected: number, room = 1e-9): void => {
  assert.ok(Math.abs(actual - expected) <= room, `${actual} is not ${expected}`);
};

const lb = 0.45359237;
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
  });

  describe('formularies and labels of other countries', () => {
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
  });

  describe('epinephrine', () => {
    const micrograms = (ratio: string, ml: number): number =>
      doseOf([`agent: lidocaine, concentration: 1%, epinephrine: "${ratio}", volume: ${ml} mL`])
        .epinephrineMicrograms;

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
