import assert from 'node:assert/strict';
import fc from 'fast-check';
import Fraction from 'fraction.js';
import { ceilTo, floorTo, isOver } from '../../src/dose/arithmetic.ts';
import { monthsBetween } from '../../src/dose/patient.ts';
import { doseOf, most } from './notes.ts';

/** Amounts as people type them: up to two decimals. */
const hundredths = (most100: number): fc.Arbitrary<number> =>
  fc.integer({ min: 1, max: most100 }).map((value) => value / 100);
const ml = hundredths(4000);
const kg = fc.integer({ min: 500, max: 15_000 }).map((value) => value / 100);
const agent = fc.constantFrom(
  { agent: 'lidocaine', strength: '1%', mgPerMl: '10' },
  { agent: 'lidocaine', strength: '0.5%', mgPerMl: '5' },
  { agent: 'bupivacaine', strength: '0.25%', mgPerMl: '2.5' },
  { agent: 'mepivacaine', strength: '2%', mgPerMl: '20' },
  { agent: 'prilocaine', strength: '4%', mgPerMl: '40' },
);
const epinephrine = fc.constantFrom('none', '1:100,000', '1:200,000');
const injection = fc.record({ ml, product: agent, epinephrine });
type Injection = typeof injection extends fc.Arbitrary<infer Value> ? Value : never;

const typed = ({ ml: volume, product, epinephrine: ratio }: Injection): string =>
  `agent: ${product.agent}, concentration: ${product.strength}, epinephrine: "${ratio}", volume: ${volume} mL`;
const patient = (weight: number): string => `id: C-1, age: 40 years, weight: ${weight} kg`;
const fractionOf = (given: readonly Injection[], weight: number): number =>
  doseOf(given.map(typed), { patient: patient(weight) }).fraction ?? NaN;

const some = fc.array(injection, { minLength: 1, maxLength: 6 });
const runs = { numRuns: 60 };

/** The sum of shares in exact fractions, from the rows that the judgement names. */
function exactly(given: readonly Injection[], weight: number): Fraction {
  const dose = doseOf(given.map(typed), { patient: patient(weight) });
  return given.reduce((sum, one) => {
    const own = dose.agents.find(
      ({ agent: name, epinephrine: with_ }) =>
        name === one.product.agent && with_ === (one.epinephrine !== 'none'),
    )!;
    const byWeight =
      own.limit.mgPerKg === undefined ? undefined : new Fraction(own.limit.mgPerKg).mul(weight);
    const cap = own.limit.capMg === undefined ? undefined : new Fraction(own.limit.capMg);
    const limit = [byWeight, cap]
      .filter((one2) => one2 !== undefined)
      .reduce((a, b) => (a.compare(b) < 0 ? a : b));
    return sum.add(new Fraction(one.ml).mul(one.product.mgPerMl).div(limit));
  }, new Fraction(0));
}

const near = (a: number, b: number): boolean =>
  Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a), Math.abs(b));

describe('the arithmetic of doses', () => {
  it('agrees with exact fractions', () => {
    fc.assert(
      fc.property(
        some,
        kg.filter((weight) => weight >= 50),
        (given, weight) => {
          assert.ok(near(fractionOf(given, weight), exactly(given, weight).valueOf()));
        },
      ),
      runs,
    );
  });

  it('grows with the volume', () => {
    fc.assert(
      fc.property(some, ml, kg, (given, more, weight) => {
        const [first, ...rest] = given;
        const greater = [{ ...first!, ml: Math.round((first!.ml + more) * 100) / 100 }, ...rest];
        assert.ok(fractionOf(greater, weight) > fractionOf(given, weight));
      }),
      runs,
    );
  });

  it('never grows with the weight', () => {
    fc.assert(
      fc.property(some, kg, kg, (given, a, b) => {
        assert.ok(!isOver(fractionOf(given, Math.max(a, b)), fractionOf(given, Math.min(a, b))));
      }),
      runs,
    );
  });

  it('does not depend on the order', () => {
    fc.assert(
      fc.property(
        some.chain((given) =>
          fc.tuple(fc.constant(given), fc.shuffledSubarray(given, { minLength: given.length })),
        ),
        kg,
        ([given, shuffled], weight) => {
          assert.ok(near(fractionOf(given, weight), fractionOf(shuffled, weight)));
        },
      ),
      runs,
    );
  });

  it('is the same for an injection and for its two parts', () => {
    fc.assert(
      fc.property(injection, injection, kg, (one, two, weight) => {
        const parts = [one, { ...one, ml: two.ml }];
        const whole = [{ ...one, ml: Math.round((one.ml + two.ml) * 100) / 100 }];
        assert.ok(near(fractionOf(parts, weight), fractionOf(whole, weight)));
      }),
      runs,
    );
  });

  it('gives the share that counting used-up body weight gives, where no cap binds', () => {
    fc.assert(
      fc.property(
        hundredths(500),
        hundredths(500),
        kg.filter((weight) => weight < 40),
        (a, b, weight) => {
          const dose = doseOf(
            [
              `agent: lidocaine, concentration: 1%, volume: ${a} mL`,
              `agent: bupivacaine, concentration: 0.25%, volume: ${b} mL`,
            ],
            { patient: patient(weight) },
          );
          const usedKg = (a * 10) / 4.5 + (b * 2.5) / 2.5;
          assert.ok(near(dose.fraction!, usedKg / weight));
        },
      ),
      runs,
    );
  });

  it('never gives back more mL or mg than the limit, and at most a step less', () => {
    fc.assert(
      fc.property(agent, kg, (product, weight) => {
        const { maxMl, maxMg, limit } = most(product.agent, Number(product.mgPerMl), {
          kg: weight,
          months: 480,
        });
        const byWeight = new Fraction(limit.mgPerKg ?? 1e6).mul(weight);
        const cap = new Fraction(limit.capMg ?? 1e6);
        const exact = byWeight.compare(cap) < 0 ? byWeight : cap;
        const given = new Fraction(maxMl).mul(product.mgPerMl);
        assert.ok(given.compare(exact) <= 0, `${given.toFraction()} > ${exact.toFraction()}`);
        assert.ok(given.add(new Fraction(product.mgPerMl).div(10)).compare(exact) > 0);
        assert.ok(new Fraction(maxMg).compare(exact) <= 0);
        assert.ok(new Fraction(maxMg).add('0.01').compare(exact) > 0);
      }),
      { numRuns: 200 },
    );
  });

  it('leaves what still fits: with it the dose is within the limit, with 0.1 mL more it is not', () => {
    fc.assert(
      fc.property(injection, kg, (one, weight) => {
        const [left] = doseOf([typed(one)], { patient: patient(weight) }).left;
        const after = (more: number): number =>
          fractionOf([one, { ...one, ml: Math.round(more * 10) / 10 }], weight);
        fc.pre(left !== undefined && fractionOf([one], weight) <= 1);
        if (left.ml > 0) assert.ok(!isOver(after(left.ml), 1));
        assert.ok(isOver(after(left.ml + 0.1), 1));
      }),
      runs,
    );
  });

  it('without a weight names one that is enough, and 0.1 kg less is not', () => {
    fc.assert(
      fc.property(some, (given) => {
        const { neededKg } = doseOf(given.map(typed), { patient: 'id: C-1, age: 40 years' });
        fc.pre(neededKg !== undefined && neededKg > 1);
        assert.ok(!isOver(fractionOf(given, neededKg), 1));
        assert.ok(isOver(fractionOf(given, Math.round(neededKg * 10 - 1) / 10), 1));
      }),
      runs,
    );
  });

  it('cuts and lifts to steps without ever going to the wrong side', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e7 }), (thousandths) => {
        const value = thousandths / 1000;
        const exact = new Fraction(thousandths, 1000);
        assert.ok(new Fraction(floorTo(value, 0.1)).compare(exact) <= 0);
        assert.ok(new Fraction(ceilTo(value, 0.1)).compare(exact) >= 0);
        assert.ok(
          new Fraction(ceilTo(value, 0.1)).sub(new Fraction(floorTo(value, 0.1))).compare('0.1') <= 0,
        );
      }),
    );
  });

  it('counts months as people do', () => {
    assert.equal(monthsBetween('2020-02-29', '2021-02-28'), 11);
    assert.equal(monthsBetween('2020-02-29', '2021-03-01'), 12);
    assert.equal(monthsBetween('2014-03-02', '2026-03-02'), 144);
    assert.equal(monthsBetween('2014-03-03', '2026-03-02'), 143);
  });
});
