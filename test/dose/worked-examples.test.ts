import assert from 'node:assert/strict';
import { floorTo, isOver } from '../../src/dose/arithmetic.ts';
import { ceilingBy } from '../../src/limits/ceilings.ts';
import type { LimitRow } from '../../src/reference/limits.ts';
import { referenceTables, type Tables } from '../../src/practice/tables.ts';
import { doseOf, most } from './notes.ts';

/**
 * Worked examples as their sources print them, each held against the rows of the product: where a source rounds up,
 * slips in its arithmetic or contradicts itself, the test has its number too, and says what is right.
 */

const lb = 0.45359237;

const near = (actual: number, expected: number, room = 1e-9): void => {
  assert.ok(Math.abs(actual - expected) <= room, `${actual} is not ${expected}`);
};

interface Wanted {
  readonly agent: string;
  readonly authority: string;
  readonly epinephrine?: boolean;
  readonly months?: number;
}

/** The product's row of an authority. @throws where it has none */
function rowOf({ agent, authority, epinephrine = false, months = 480 }: Wanted): LimitRow {
  const row = referenceTables.limits.find(
    (one) =>
      one.agent === agent &&
      one.authority === authority &&
      one.epinephrine === epinephrine &&
      months >= (one.population.fromMonths ?? 0) &&
      months < (one.population.belowMonths ?? Infinity),
  );
  assert.ok(row !== undefined, `${authority} has no row for ${agent}`);
  return row;
}

const limitMg = (wanted: Wanted, kg: number): number => ceilingBy(rowOf(wanted), kg).limitMg;

/** The tables with these rows of limits alone, so that they are what counts. */
const ruledBy = (...wanted: readonly Wanted[]): Tables => ({
  ...referenceTables,
  limits: wanted.map(rowOf),
});

const patient = (kg: number, age = '40 years'): string => `id: C-1, age: ${age}, weight: ${kg} kg`;

const injected = (agent: string, concentration: string, ml: number, ratio?: string): string =>
  `agent: ${agent}, concentration: ${concentration}, ${ratio === undefined ? '' : `epinephrine: "${ratio}", `}volume: ${ml} mL`;

const mgOf = (agent: string, concentration: string, ml: number, ratio?: string): number =>
  doseOf([injected(agent, concentration, ml, ratio)], { patient: patient(70) }).agents[0]!.mg;

const microgramsOf = (ratio: string, ml: number): number =>
  doseOf([injected('lidocaine', '2%', ml, ratio)], { patient: patient(70) }).epinephrineMicrograms;

const usLabel = 'US prescribing information';
const australia = 'Therapeutic Guidelines (Australia)';
const ukReference = 'UK medicines reference';
const pearls = 'Emergency Medicine Educational Pearls';
const levonordefrin = 'mepivacaine with levonordefrin';
const lidocaine3: Wanted = { agent: 'lidocaine', authority: australia };
const mepivacaine6: Wanted = { agent: 'mepivacaine', authority: ukReference };

/** Cartridges of the label's table for a child of so many pounds: printed, of 2% with 34 mg in each. */
function dentalChild(pounds: number, printedMg: number, printedCartridges: number): void {
  const agent = levonordefrin;
  const kg = pounds * lb;
  // The adult's 3 mg/lb, which the table carries over to a child: the row prints it as 6.6 mg/kg.
  near(limitMg({ agent, authority: usLabel }, kg), printedMg, 0.25);
  const formula = (pounds / 150) * 400;
  const { maxMg } = most(agent, 20, { kg, months: 36 });
  // What counts for a child is the label's formula, and the row is no looser than it.
  assert.ok(maxMg <= formula && maxMg > formula * 0.98, `${maxMg} mg`);
  assert.ok(formula < printedMg);
  assert.ok(maxMg / 34 < printedCartridges);
  // Plain, no text gives a dose at such an age.
  assert.throws(() => most('mepivacaine', 30, { kg, months: 36 }), /no limit is known/);
}

const examples: ReadonlyMap<string, () => void> = new Map([
  [
    'W01 US label, lidocaine, children: 5 years, 50 lb, 75 to 100 mg',
    (): void => {
      const kg = 50 * lb;
      const clark = (50 / 150) * rowOf({ agent: 'lidocaine', authority: usLabel }).capMg!;
      near(clark, 100);
      const inAnyCase = limitMg({ agent: 'lidocaine', authority: usLabel, months: 60 }, kg);
      assert.ok(75 < inAnyCase && clark < inAnyCase, `${inAnyCase} mg`);
      // The formulary for children is stricter than the example, and is what counts.
      assert.equal(most('lidocaine', 10, { kg, months: 60 }).maxMg, 68.03);
    },
  ],
  [
    'W02 US label, articaine: 150 lb, 7 cartridges of 1.7 mL, 11.9 mL',
    (): void => {
      const { maxMl, limitMg: limit } = most('articaine', 40, { kg: 150 * lb, epinephrine: 10 });
      assert.equal(maxMl, 11.9);
      assert.equal(floorTo(limit / 40 / 1.7, 1), 7);
      // The same label's 0.0795 mL/lb and 3.2 mg/lb come to more.
      assert.ok(0.0795 * 150 > limit / 40 && (3.2 * 150) / 40 > limit / 40);
    },
  ],
  [
    'W03 US label, articaine: 7 mg/kg are 0.175 mL/kg of 4%',
    (): void => {
      near(most('articaine', 40, { kg: 100, epinephrine: 10 }).limitMg / 40 / 100, 0.175);
    },
  ],
  [
    'W04 US label, mepivacaine: 5.3 cartridges of 1.7 mL are 180 mg of 2%, 270 mg of 3%',
    (): void => {
      near(mgOf('mepivacaine', '2%', 9.01), 180.2);
      near(mgOf('mepivacaine', '3%', 9.01), 270.3);
      // Printed to the whole 10 mg below.
      assert.ok(mgOf('mepivacaine', '2%', 9.01) >= 180 && mgOf('mepivacaine', '3%', 9.01) >= 270);
    },
  ],
  [
    'W05 US label, mepivacaine: a child of 20 lb, 60 mg, 1.8 cartridges of 2%',
    (): void => {
      dentalChild(20, 60, 1.8);
    },
  ],
  [
    'W06 US label, mepivacaine: a child of 30 lb, 90 mg, 2.6 cartridges of 2%',
    (): void => {
      dentalChild(30, 90, 2.6);
    },
  ],
  [
    'W07 Canadian table: 20 kg, lidocaine 2%, 140 mg, 7 mL; its 3.9 cartridges of 1.8 mL are over it',
    (): void => {
      const wanted: Wanted = { agent: 'lidocaine', authority: 'Canadian dental table', epinephrine: true };
      assert.equal(limitMg(wanted, 20), 140);
      const { maxMg, maxMl } = most('lidocaine', 20, { kg: 20, months: 72, epinephrine: 10 });
      assert.deepEqual([maxMg, maxMl], [140, 7]);
      assert.ok(isOver(3.9 * 1.8 * 20, maxMg));
      assert.equal(floorTo(maxMg / 20 / 1.8, 0.1), 3.8);
    },
  ],
  [
    'W09 ABC of Practical Procedures: 75 kg, bupivacaine 0.5%, 150 mg, 30 mL',
    (): void => {
      const mg = limitMg({ agent: 'bupivacaine', authority: 'ABC of Practical Procedures' }, 75);
      assert.equal(mg, 150);
      assert.equal(floorTo(mg / 5, 0.1), 30);
    },
  ],
  [
    'W11 Educational Pearls: 20 kg, lidocaine 1%, 8 mL',
    (): void => {
      const mg = limitMg({ agent: 'lidocaine', authority: pearls, months: 72 }, 20);
      assert.equal(floorTo(mg / 10, 0.1), 8);
    },
  ],
  [
    'W13 Educational Pearls: 20 kg, lidocaine 2%, 4 mL',
    (): void => {
      const mg = limitMg({ agent: 'lidocaine', authority: pearls, months: 72 }, 20);
      assert.equal(floorTo(mg / 20, 0.1), 4);
    },
  ],
  [
    'W15 Educational Pearls: 20 kg, bupivacaine 0.25% with epinephrine, 24 mL',
    (): void => {
      const wanted: Wanted = { agent: 'bupivacaine', authority: pearls, epinephrine: true, months: 72 };
      assert.equal(floorTo(limitMg(wanted, 20) / 2.5, 0.1), 24);
    },
  ],
  [
    'W19 dental journal: articaine 4% with 1:200,000, 200 ug are 22 cartridges of 1.8 mL, 1584 mg, called excessive',
    (): void => {
      const cartridge = microgramsOf('1:200,000', 1.8);
      near(cartridge, 9);
      assert.equal(floorTo(referenceTables.epinephrine.healthy.micrograms / cartridge, 1), 22);
      near(mgOf('articaine', '4%', 22 * 1.8, '1:200,000'), 1584);
      const given = doseOf([injected('articaine', '4%', 39.6, '1:200,000')], { patient: patient(70) });
      assert.ok(isOver(given.fraction!, 3));
      assert.equal(
        isOver(given.epinephrineMicrograms, referenceTables.epinephrine.healthy.micrograms),
        false,
      );
    },
  ],
  ...(
    [
      ['W20', lidocaine3, 70, 210],
      ['W21', mepivacaine6, 50, 300],
      ['W23', lidocaine3, 68, 204],
      ['W25', lidocaine3, 44, 132],
      ['W26', mepivacaine6, 63, 378],
    ] as const
  ).map(([id, wanted, kg, mg]): [string, () => void] => [
    `${id} podiatry slides: ${wanted.agent}, ${kg} kg, ${mg} mg`,
    (): void => {
      near(limitMg(wanted, kg), mg);
    },
  ]),
  [
    'W28 podiatry slides: mepivacaine, weight counted to 70 kg, 132 mg given, 288 mg left',
    (): void => {
      const { left } = doseOf([injected('mepivacaine', '2%', 6.6)], {
        patient: patient(70),
        tables: ruledBy(mepivacaine6),
      });
      near(left[0]!.mg, 288);
    },
  ],
  [
    'W30 podiatry slides: 192 mg of mepivacaine use up 32 of 70 kg and leave 114 mg of lidocaine',
    (): void => {
      const asked = { patient: patient(70), tables: ruledBy(mepivacaine6, lidocaine3) };
      const both = (ml: number): number =>
        doseOf([injected('mepivacaine', '2%', 9.6), injected('lidocaine', '1%', ml)], asked).fraction!;
      assert.equal(isOver(both(11.4), 1), false);
      assert.equal(isOver(both(11.41), 1), true);
    },
  ],
  [
    'W32 podiatry slides: 204 and 20 mg, printed as 230 mg, are 224 mg and over 210 mg',
    (): void => {
      const { agents } = doseOf([injected('lidocaine', '1%', 20.4), injected('lidocaine', '1%', 2)], {
        patient: patient(70),
        tables: ruledBy(lidocaine3),
      });
      near(agents[0]!.mg, 224);
      near(agents[0]!.limitMg, 210);
      assert.ok(isOver(agents[0]!.mg, agents[0]!.limitMg));
      // The slip does not change what follows.
      assert.ok(isOver(230, agents[0]!.limitMg));
    },
  ],
  [
    'W33 student hand-out: 70 kg at 7 mg/kg, printed as 499 mg and 13.8 cartridges, are 490 mg and 13.6',
    (): void => {
      const { maxMg } = most('lidocaine', 20, { kg: 70, epinephrine: 10 });
      assert.equal(maxMg, 490);
      assert.equal(floorTo(maxMg / 36, 0.1), 13.6);
      assert.ok(isOver(499, maxMg) && isOver(13.8 * 36, maxMg));
    },
  ],
  [
    'W35 questions and answers: 2 cartridges of 1.8 mL of 2% are 72 mg',
    (): void => {
      near(mgOf('lidocaine', '2%', 3.6), 72);
    },
  ],
  [
    'W36 BNF for Children: 3 mg/kg are 0.3 mL/kg of 1%',
    (): void => {
      const { maxMl, limit } = most('lidocaine', 10, { kg: 20, months: 72 });
      assert.equal(limit.authority, 'BNF for Children');
      near(maxMl / 20, 0.3);
    },
  ],
  [
    'W37 clinical pharmacology notes: 500 ug are 100 mL of 1:200,000',
    (): void => {
      near(microgramsOf('1:200,000', 100), 500);
    },
  ],
  [
    'W38 student hand-out: 1.8 mL of 1:80,000 hold 0.0225 mg',
    (): void => {
      near(microgramsOf('1:80,000', 1.8) / 1000, 0.0225);
    },
  ],
  [
    'W39 US label, lidocaine, Table 1: 0.5% or 1%, 1 to 60 mL, 5 to 300 mg, which is true of 0.5% alone',
    (): void => {
      near(mgOf('lidocaine', '0.5%', 1), 5);
      const fractions = ['0.5%', '1%'].map(
        (strength) => doseOf([injected('lidocaine', strength, 60)], { patient: patient(90) }).fraction!,
      );
      assert.deepEqual(fractions, [1, 2]);
      assert.equal(rowOf({ agent: 'lidocaine', authority: usLabel }).capMg, 300);
    },
  ],
  [
    'W41 UK medicines reference: 2.2, 4, 4.4 and 6.6 mL of mepivacaine 3% are 66, 120, 132 and 198 mg',
    (): void => {
      const mg = [2.2, 4, 4.4, 6.6].map((ml) => mgOf('mepivacaine', '3%', ml));
      [66, 120, 132, 198].forEach((wanted, at) => {
        near(mg[at]!, wanted);
      });
    },
  ],
  [
    'W42 UK medicines reference, children: 0.75 and 3 mg/kg are 0.025 and 0.1 mL/kg of mepivacaine 3%',
    (): void => {
      const row = rowOf({ agent: 'mepivacaine', authority: ukReference, months: 96 });
      assert.equal(row.mgPerKg, 3);
      near(most('mepivacaine', 30, { kg: 20, months: 96 }).limitMg / 30 / 20, 0.1);
      const { agents } = doseOf([injected('mepivacaine', '3%', 0.025 * 20)], {
        patient: patient(20, '8 years'),
      });
      near(agents[0]!.mgPerKg!, 0.75);
    },
  ],
  [
    'W44 US label, lidocaine solution 4%: 1 to 5 mL are 40 to 200 mg, 0.6 to 3.0 mg/kg',
    (): void => {
      near(mgOf('lidocaine', '4%', 1), 40);
      const { agents } = doseOf([injected('lidocaine', '4%', 5)], { patient: patient(66.7) });
      near(agents[0]!.mg, 200);
      near(agents[0]!.mgPerKg!, 3, 0.002);
    },
  ],
  [
    'W45 AAGBI: 70 kg, lipid 1.5 mL/kg, 15 mL/kg/h and at most 12 mL/kg, printed as 100 mL, 1000 mL/h and 840 mL',
    (): void => {
      // No dose of lipid is in the product, which names the guideline; what it prints is never above its own numbers by weight.
      const exact = [1.5, 15, 12].map((perKg) => floorTo(perKg * 70, 0.1));
      assert.deepEqual(exact, [105, 1050, 840]);
      // The first two are printed rounded down, the third to the mL.
      const printed: readonly number[] = [100, 1000, 840];
      assert.ok(printed.every((one, at) => !isOver(one, exact[at]!)));
    },
  ],
  [
    'W46 expert answer: A with 3 mg/kg and B a quarter as potent, A + B/4 under 3 mg/kg',
    (): void => {
      const weaker: Wanted = {
        agent: 'chloroprocaine',
        authority: 'Poisoning & Drug Overdose',
        epinephrine: true,
      };
      assert.equal(rowOf(weaker).mgPerKg, 4 * rowOf(lidocaine3).mgPerKg!);
      // 1.5 mg/kg of the one and 6 mg/kg of the other at 70 kg.
      const { fraction } = doseOf(
        [injected('lidocaine', '1%', 10.5), injected('chloroprocaine', '2%', 21, '1:200,000')],
        { patient: patient(70), tables: ruledBy(lidocaine3, weaker) },
      );
      near(fraction!, (1.5 + 6 / 4) / 3);
    },
  ],
  [
    'W48 US label, articaine: 0.5 to 2.5 mL are 20 to 100 mg, 1.0 to 5.1 mL are 40 to 204 mg',
    (): void => {
      const mg = [0.5, 2.5, 1, 5.1].map((ml) => mgOf('articaine', '4%', ml, '1:100,000'));
      [20, 100, 40, 204].forEach((wanted, at) => {
        near(mg[at]!, wanted);
      });
    },
  ],
  [
    'W49 emergency wiki: 70 kg, lipid 0.25 mL/kg/min, printed as 18 mL/h, is 17.5 mL/min',
    (): void => {
      const perMinute = 0.25 * 70;
      near(perMinute, 17.5);
      assert.equal(Math.round(perMinute), 18);
      // By the hour it is what the guideline has, sixty times what is printed.
      assert.equal(floorTo(perMinute * 60, 0.1), 15 * 70);
    },
  ],
]);

describe('worked examples as they were published', () => {
  for (const [title, holds] of examples) it(title, holds);

  it('are all there', () => {
    const ids = [...examples.keys()].map((title) => title.slice(0, 3));
    const all =
      'W01 W02 W03 W04 W05 W06 W07 W09 W11 W13 W15 W19 W20 W21 W23 W25 W26 W28 W30 W32 W33 W35 W36 W37 W38 W39 W41 W42 W44 W45 W46 W48 W49';
    assert.deepEqual(ids, all.split(' '));
    assert.equal(ids.length, 33);
  });
});

describe('exactly the limit, where binary fractions are awkward', () => {
  // mg/kg × kg and mL × mg/mL do not meet in the last digit: 4.5 × 62.2 is 279.90000000000003, 0.1 + 0.2 is not 0.3.
  const cases: readonly (readonly [
    agent: string,
    percent: string,
    kg: number,
    ml: readonly number[],
    ratio?: string,
  ])[] = [
    ['lidocaine', '1%', 62.2, [27.99]],
    ['lidocaine', '1%', 62.2, [9.33, 9.33, 9.33]],
    ['lidocaine', '1%', 62.2, [0.1, 0.2, 27.69]],
    ['lidocaine', '2%', 58.6, [13.185]],
    ['lidocaine', '0.5%', 50.2, [45.18]],
    ['lidocaine', '1%', 50.1, [0.7, 0.1, 21.745]],
    ['lidocaine', '1%', 66.6, [9.99, 9.99, 9.99]],
    ['lidocaine', '1%', 55.1, [38.57], '1:100,000'],
    ['lidocaine', '2%', 64.3, [0.3, 0.6, 21.605], '1:200,000'],
    ['bupivacaine', '0.25%', 53.3, [53.3]],
    ['bupivacaine', '0.5%', 61.7, [0.1, 0.2, 30.55]],
    ['bupivacaine', '0.25%', 52.1, [62.52], '1:200,000'],
    ['mepivacaine', '1%', 51.3, [35.91]],
    ['mepivacaine', '2%', 50.7, [0.7, 17.045]],
    ['chloroprocaine', '2%', 60.3, [33.165]],
    ['articaine', '4%', 60.6, [1.7, 1.7, 7.205], '1:100,000'],
  ];

  for (const [agent, percent, kg, volumes, ratio] of cases)
    it(`${agent} ${percent}${ratio === undefined ? '' : ` with ${ratio}`} at ${kg} kg: ${volumes.join(' + ')} mL`, () => {
      const judged = (more: number): number =>
        doseOf(
          volumes.map((ml, at) =>
            injected(agent, percent, at === 0 ? Number((ml + more).toFixed(4)) : ml, ratio),
          ),
          { patient: patient(kg) },
        ).fraction!;
      near(judged(0), 1, 1e-9);
      assert.equal(isOver(judged(0), 1), false);
      assert.equal(isOver(judged(0.001), 1), true);
      assert.equal(isOver(judged(-0.001), 1), false);
      assert.ok(judged(-0.001) < 1);
    });

  it('has sums that are not what they seem in binary', () => {
    assert.notEqual(4.5 * 62.2, 279.9);
    assert.notEqual(0.1 + 0.2 + 27.69, 27.99);
  });
});
