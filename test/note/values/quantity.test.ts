import assert from 'node:assert/strict';
import { UcumLhcUtils } from '@lhncbc/ucum-lhc';
import fc from 'fast-check';
import { formatNumber } from '../../../src/note/values/format.ts';
import { readQuantity, type Kind } from '../../../src/note/values/quantity.ts';
import { problemsOf } from '../spelled.ts';

const amountOf = (text: string, kind: Kind, key?: string): number | undefined => {
  const { value, problems } = readQuantity(text, kind, key);
  assert.deepEqual(problemsOf(text, { value, problems }), [], text);
  return value?.amount;
};
const saidOf = (text: string, kind: Kind, key?: string): readonly string[] =>
  problemsOf(text, readQuantity(text, kind, key));

describe('reading quantities', () => {
  it('reads them as people type them, in the base unit of their kind', () => {
    const cases: readonly [string, Kind, number][] = [
      ['1.5 mL', 'volume', 1.5],
      ['1.5mL', 'volume', 1.5],
      ['1.5 ML', 'volume', 1.5],
      ['2 milliliters', 'volume', 2],
      ['2 millilitres', 'volume', 2],
      ['300 µL', 'volume', 0.3],
      ['300 μL', 'volume', 0.3],
      ['62kg', 'weight', 62],
      ['62.5 kilograms', 'weight', 62.5],
      ['3400 g', 'weight', 3.4],
      ['2 g', 'amount', 2],
      ['500 mg', 'amount', 0.5],
      ['1%', 'concentration', 10],
      ['0.25 %', 'concentration', 2.5],
      ['1 percent', 'concentration', 10],
      ['10 mg/mL', 'concentration', 10],
      ['10 mg per mL', 'concentration', 10],
      ['10 mg / ml', 'concentration', 10],
      ['500 mcg/mL', 'concentration', 0.5],
      ['500 ug/ml', 'concentration', 0.5],
      ['4 mm', 'length', 4],
      ['0 mm', 'length', 0],
      ['4.0 mm', 'length', 4],
      ['1.1 cm', 'length', 11],
      ['20 cm2', 'area', 20],
      ['20 cm²', 'area', 20],
      ['20 sq cm', 'area', 20],
      ['2000 mm2', 'area', 20],
    ];
    for (const [text, kind, amount] of cases) assert.equal(amountOf(text, kind), amount, text);
  });

  it('reads halves and quarters in one sign', () => {
    for (const [text, amount] of [
      ['½ mL', 0.5],
      ['1½ mL', 1.5],
      ['2 ¼ mL', 2.25],
      ['10¾mL', 10.75],
    ] as const)
      assert.equal(readQuantity(text, 'volume').value?.amount, amount, text);
    // A fraction in two numbers may be a slip, and so may a half between digits.
    for (const text of ['1 1/2 mL', '1/2 mL', '1½5 mL', '1.5½ mL'])
      assert.equal(readQuantity(text, 'volume').value, undefined, text);
  });

  it('keeps what was typed beside it', () => {
    assert.deepEqual(readQuantity('137 lb', 'weight').value, {
      amount: 137 * 0.45359237,
      unit: 'kg',
      typedAmount: 137,
      typedUnit: 'lb',
    });
  });

  it('adds the smaller unit of a pair', () => {
    assert.equal(amountOf('137 lb 8 oz', 'weight'), 137.5 * 0.45359237);
    assert.equal(amountOf('8lb 4oz', 'weight'), 8.25 * 0.45359237);
    assert.ok(Math.abs(amountOf('10 st 4 lb', 'weight')! - 144 * 0.45359237) < 1e-9);
    assert.ok(Math.abs(amountOf('5 ft 6 in', 'length', 'height')! - 1676.4) < 1e-9);
    assert.ok(Math.abs(amountOf(`5'6"`, 'length', 'height')! - 1676.4) < 1e-9);
  });

  it('reads published strengths', () => {
    // 1% = 10 mg/mL: clinical-pharmacology textbook notes on local anesthetics; podiatry teaching slides.
    assert.equal(amountOf('1%', 'concentration'), 10);
    // Strengths of US labels: lidocaine 0.5% and 2%, bupivacaine 0.25%, articaine 4% (40 mg/mL), mepivacaine 3%.
    assert.deepEqual(
      ['0.5%', '2%', '0.25%', '4%', '3%'].map((text) => amountOf(text, 'concentration')),
      [5, 20, 2.5, 40, 30],
    );
  });

  it('never answers a number that another engine for units would not', () => {
    const ucum = UcumLhcUtils.getInstance();
    const conversions: readonly [Kind, string, string, string][] = [
      ['weight', 'lb', '[lb_av]', 'kg'],
      ['weight', 'oz', '[oz_av]', 'kg'],
      ['weight', 'st', '[stone_av]', 'kg'],
      ['weight', 'g', 'g', 'kg'],
      ['amount', 'mg', 'mg', 'g'],
      ['volume', 'µL', 'uL', 'mL'],
      ['volume', 'L', 'L', 'mL'],
      ['length', 'cm', 'cm', 'mm'],
      ['length', 'in', '[in_i]', 'mm'],
      ['length', 'ft', '[ft_i]', 'mm'],
      ['length', 'm', 'm', 'mm'],
      ['area', 'mm2', 'mm2', 'cm2'],
      ['area', 'in2', '[sin_i]', 'cm2'],
      // UCUM's % has no dimension; as grams in 100 mL it is g/dL.
      ['concentration', '%', 'g/dL', 'mg/mL'],
      ['concentration', 'µg/mL', 'ug/mL', 'mg/mL'],
      ['concentration', 'g/L', 'g/L', 'mg/mL'],
      ['concentration', 'g/mL', 'g/mL', 'mg/mL'],
    ];
    for (const [kind, unit, from, to] of conversions)
      for (const amount of [0.25, 1, 1.1, 62.5, 137]) {
        const theirs = ucum.convertUnitTo(from, amount, to);
        const ours = readQuantity(`${formatNumber(amount)} ${unit}`, kind).value?.amount;
        assert.equal(theirs.status, 'succeeded', from);
        assert.ok(
          Math.abs(ours! - theirs.toVal!) <= theirs.toVal! * 1e-12,
          `${amount} ${unit}: ${ours} ${theirs.toVal}`,
        );
      }
  });

  it('shifts powers of ten without noise', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 29999 }), (tenths) => {
        assert.equal(
          readQuantity(`${formatNumber(tenths / 1000)} cm`, 'length').value?.amount,
          Number(`${tenths}e-2`),
        );
      }),
    );
  });

  it('reads back what it writes, whatever the blanks and the case', () => {
    const units: readonly [Kind, string][] = [
      ['volume', 'mL'],
      ['weight', 'kg'],
      ['amount', 'g'],
      ['concentration', 'mg/mL'],
      ['concentration', '%'],
      ['length', 'mm'],
      ['area', 'cm2'],
    ];
    fc.assert(
      fc.property(
        fc.constantFrom(...units),
        fc.integer({ min: 1, max: 99999 }),
        fc.constantFrom('', ' ', '  ', '\u00a0'),
        fc.boolean(),
        ([kind, unit], hundredths, blank, upper) => {
          const number = formatNumber(hundredths / 100);
          const usual = readQuantity(`${number} ${unit}`, kind).value?.amount;
          const other = ` ${number}${blank}${upper ? unit.toUpperCase() : unit} `;
          assert.equal(usual, Number(`${number}e${unit === '%' ? 1 : 0}`));
          assert.equal(readQuantity(other, kind).value?.amount, usual);
        },
      ),
    );
  });
});

describe('what is said of a quantity', () => {
  it('that can be misread', () => {
    assert.deepEqual(saidOf('.5 mL', 'volume'), ['quantity/leading-zero [.5] -> 0.5!']);
    assert.deepEqual(saidOf('1.0 mL', 'volume'), ['quantity/trailing-zero [1.0] -> 1!']);
    assert.deepEqual(saidOf('10.0 mL', 'volume'), ['quantity/trailing-zero [10.0] -> 10!']);
    assert.deepEqual(saidOf('1.50%', 'concentration'), ['quantity/trailing-zero [1.50] -> 1.5!']);
    assert.deepEqual(saidOf('1 cc', 'volume'), ['quantity/misread-unit [cc] -> mL!']);
    assert.deepEqual(saidOf('.5 cc', 'volume'), [
      'quantity/leading-zero [.5] -> 0.5!',
      'quantity/misread-unit [cc] -> mL!',
    ]);
    assert.equal(readQuantity('.5 cc', 'volume').value?.amount, 0.5);
  });

  it('but a weight or a size may show how exactly it was measured', () => {
    assert.deepEqual(saidOf('62.0 kg', 'weight'), []);
    assert.deepEqual(saidOf('4.0 mm', 'length'), []);
  });

  it('that has a comma', () => {
    assert.deepEqual(saidOf('1,5 mL', 'volume'), ['quantity/decimal-comma [1,5] -> 1.5']);
    assert.deepEqual(saidOf(',5 mL', 'volume'), ['quantity/decimal-comma [,5] -> 0.5']);
    assert.deepEqual(saidOf('1,500 mg', 'amount'), ['quantity/decimal-comma/grouped [1,500] -> 1500 | 1.5']);
  });

  it('that lacks its unit', () => {
    assert.deepEqual(saidOf('62', 'weight'), ['quantity/unit-missing [62] -> 62 kg | 62 lb']);
    assert.deepEqual(saidOf('1.5', 'volume'), ['quantity/unit-missing [1.5] -> 1.5 mL']);
    assert.deepEqual(saidOf('1', 'concentration'), ['quantity/unit-missing [1] -> 1% | 1 mg/mL']);
    assert.deepEqual(saidOf('168', 'length', 'height'), ['quantity/unit-missing [168] -> 168 cm | 168 in']);
  });

  it('that has a unit of another kind, or none that is known', () => {
    assert.deepEqual(saidOf('1.5 mg', 'volume'), ['quantity/wrong-unit [mg]']);
    assert.deepEqual(saidOf('62 mL', 'weight'), ['quantity/wrong-unit [mL]']);
    assert.deepEqual(saidOf('2 mL', 'amount'), ['quantity/wrong-unit [mL]']);
    assert.deepEqual(saidOf('10 mg', 'concentration'), ['quantity/wrong-unit [mg]']);
    assert.deepEqual(saidOf('2 drops', 'volume'), ['quantity/unknown-unit [drops]']);
    assert.deepEqual(saidOf('62 kgg', 'weight'), ['quantity/unknown-unit/near [kgg] -> kg']);
    assert.deepEqual(saidOf('2 constructor', 'volume'), ['quantity/unknown-unit [constructor]']);
  });

  it('that is nothing, less than nothing, or out of all proportion', () => {
    assert.deepEqual(saidOf('0 mL', 'volume'), ['quantity/not-positive/zero [0 mL]']);
    assert.deepEqual(saidOf('-1 mL', 'volume'), ['quantity/not-positive/negative [-1 mL]']);
    assert.deepEqual(saidOf('150 mL', 'volume'), ['quantity/implausible/high [150 mL]']);
    assert.deepEqual(saidOf('900 kg', 'weight'), ['quantity/implausible/high [900 kg]']);
    assert.deepEqual(saidOf('100 %', 'concentration'), ['quantity/implausible/high [100 %]']);
    assert.deepEqual(saidOf('0.001 mL', 'volume'), ['quantity/implausible/low [0.001 mL]']);
    assert.equal(readQuantity('150 mL', 'volume').value?.amount, 150);
    assert.equal(readQuantity('0 mL', 'volume').value, undefined);
  });

  it('that holds more words or numbers than one amount', () => {
    for (const text of ['1-2 mL', '1 to 2 mL', '1/2 mL', '1 1/2 mL', '1:100 mL', '1 x 2 mL'])
      assert.deepEqual(saidOf(text, 'volume'), [`quantity/unreadable/numbers [${text}]`]);
    for (const text of ['1.5 mL total', '1.5 mL in total', '1.5 mL injected'])
      assert.equal(readQuantity(text, 'volume').value?.amount, 1.5, text);
    for (const text of ['1% w/v', '1%w/v', '1% HCl', '10 mg/mL hydrochloride'])
      assert.equal(readQuantity(text, 'concentration').value?.amount, 10, text);
    assert.deepEqual(saidOf('1.5 mL each side', 'volume'), ['quantity/not-understood/behind [each side]']);
    assert.deepEqual(saidOf('1.5 mL x 2', 'volume'), ['quantity/not-understood/behind [x 2]']);
    assert.deepEqual(saidOf('1.5 mL (total 3 mL)', 'volume'), [
      'quantity/not-understood/behind [(total 3 mL)]',
    ]);
    assert.equal(readQuantity('1.5 mL x 2', 'volume').value, undefined);
  });

  it('that is none', () => {
    for (const text of ['', 'mL', 'about 1 mL', '~1 mL', '<1 mL', 'half a mL', '⅓ mL', '1O mL'])
      assert.equal(saidOf(text, 'volume').length, 1, text);
    for (const text of ['05 mL', '1. mL', '1.2.3 mL', '1e3 mL', 'NaN mL', 'Infinity mL', '0x10 mL'])
      assert.equal(readQuantity(text, 'volume').value, undefined, text);
    assert.equal(readQuantity(`${'9'.repeat(400)} mL`, 'volume').value, undefined);
  });
});
