import assert from 'node:assert/strict';
import fc from 'fast-check';
import { formatDilution } from '../../../src/note/values/format.ts';
import { readDilution, readMixture } from '../../../src/note/values/ratios.ts';
import { problemsOf } from '../spelled.ts';

describe('reading how much epinephrine there is', () => {
  it('reads published ratios', () => {
    const published: readonly [string, number][] = [
      ['1:1,000', 1000], // 1 mg/mL: clinical-pharmacology textbook notes
      ['1:80,000', 12.5], // student hand-out on maximum doses
      ['1:100,000', 10], // the same hand-out; a product record of the national drug code directory
      ['1:200,000', 5], // clinical-pharmacology textbook notes
      // Computed from the definition, 1 g in so many mL:
      ['1:50,000', 20],
      ['1:400,000', 2.5],
      ['1:500,000', 2],
      ['1:1,000,000', 1],
    ];
    for (const [text, microgramsPerMl] of published)
      assert.equal(readDilution(text).value?.microgramsPerMl, microgramsPerMl, text);
  });

  it('takes the spellings of one ratio for the same', () => {
    for (const text of [
      '1:100000',
      '1:100 000',
      '1 : 100,000',
      '1 in 100,000',
      '1/100,000',
      '1:100k',
      '1:100.000',
      ' 1:100,000 ',
    ])
      assert.deepEqual(
        readDilution(text),
        { value: { microgramsPerMl: 10, ratio: 100000 }, problems: [] },
        text,
      );
    // 1:100,000 is 0.01 mg/mL of the base: label of articaine with epinephrine.
    for (const text of ['10 µg/mL', '10 μg/mL', '10 mcg/mL', '10 ug/ml', '0.01 mg/mL'])
      assert.deepEqual(
        readDilution(text),
        { value: { microgramsPerMl: 10, ratio: undefined }, problems: [] },
        text,
      );
  });

  it('takes a ratio with its strength for the ratio, where both say the same', () => {
    for (const text of [
      '1:100,000 (10 mcg/mL)',
      '1:100,000 = 10 mcg/mL',
      '1:100,000, 10 µg/mL',
      '1:100,000 10 mcg/mL',
      '1:100000 (0.01 mg/mL)',
      '10 mcg/mL (1:100,000)',
    ])
      assert.deepEqual(
        readDilution(text),
        { value: { microgramsPerMl: 10, ratio: 100000 }, problems: [] },
        text,
      );
    assert.equal(readDilution('1:80,000 (12.5 mcg/mL)').value?.microgramsPerMl, 12.5);
    for (const text of ['1:100,000 (5 mcg/mL)', '5 mcg/mL (1:100,000)', '1:200,000 = 10 mcg/mL']) {
      assert.deepEqual(problemsOf(text, readDilution(text)), [`quantity/unreadable/strengths [${text}]`]);
      assert.equal(readDilution(text).value, undefined);
    }
  });

  it('reads that there is none', () => {
    for (const text of ['none', 'no', 'plain', 'without', 'None'])
      assert.deepEqual(readDilution(text), { value: { microgramsPerMl: 0, ratio: undefined }, problems: [] });
  });

  it('does not guess', () => {
    const said = (text: string): readonly string[] => problemsOf(text, readDilution(text));
    for (const text of ['yes', 'epi', 'with']) {
      assert.deepEqual(said(text), [`quantity/strength-unsaid [${text}]`]);
      assert.equal(readDilution(text).value, undefined);
    }
    for (const text of [
      '1:10,0000',
      '1:1000,00',
      '2:100,000',
      '1:',
      ':100,000',
      'weak',
      '10',
      '',
      '1:100,00k',
    ])
      assert.deepEqual(said(text), [`quantity/unreadable [${text}]`]);
    assert.deepEqual(said('100,000'), ['quantity/unreadable [100,000] -> 1:100,000']);
    assert.deepEqual(said('1:0'), ['quantity/not-positive/zero [1:0]']);
    assert.deepEqual(said('1:10,000,000'), ['quantity/implausible/dilution [1:10,000,000]']);
    assert.deepEqual(said('.01 mg/mL'), ['quantity/leading-zero [.01] -> 0.01!']);
  });

  it('reads back what is shown', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1_000_000 }), (ratio) => {
        const value = { microgramsPerMl: 1e6 / ratio, ratio };
        assert.deepEqual(readDilution(formatDilution(value)), { value, problems: [] });
      }),
    );
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100_000 }), (hundredths) => {
        const value = { microgramsPerMl: hundredths / 100, ratio: undefined };
        assert.deepEqual(readDilution(formatDilution(value)).value, value);
      }),
    );
  });
});

describe('reading a buffered mixture', () => {
  it('reads the parts', () => {
    assert.deepEqual(readMixture('9:1').value, { buffered: true, parts: { anesthetic: 9, bicarbonate: 1 } });
    assert.deepEqual(readMixture('10:1').value?.parts, { anesthetic: 10, bicarbonate: 1 });
    assert.deepEqual(readMixture('3 to 1').value?.parts, { anesthetic: 3, bicarbonate: 1 });
  });

  it('reads the parts beside the strength of the bicarbonate', () => {
    for (const text of [
      '9:1 with 8.4%',
      '9:1 with 8.4% sodium bicarbonate',
      '9:1 (8.4% bicarb)',
      '8.4% sodium bicarbonate, 9:1',
      '9:1 w/ sodium bicarbonate 4.2%',
      '9:1 with bicarbonate',
    ])
      assert.deepEqual(readMixture(text), {
        value: { buffered: true, parts: { anesthetic: 9, bicarbonate: 1 } },
        problems: [],
      });
    for (const text of ['8.4%', 'with 8.4% bicarbonate', 'sodium bicarbonate'])
      assert.deepEqual(readMixture(text).value, { buffered: true, parts: undefined }, text);
    assert.equal(readMixture('no bicarb').value?.buffered, false);
    assert.deepEqual(problemsOf('1:9 with 8.4%', readMixture('1:9 with 8.4%')), [
      'quantity/mixture-order [1:9] -> 9:1',
    ]);
    for (const text of ['9:1 with 1%', '9:1 with 8.4% bicarb, fresh', '1 mL 8.4% bicarb', '84%'])
      assert.equal(readMixture(text).value, undefined, text);
  });

  it('has no parts where none are given', () => {
    for (const text of ['yes', 'no', 'none'])
      assert.deepEqual(readMixture(text).value, { buffered: text === 'yes', parts: undefined });
    assert.equal(readMixture('yes').value?.buffered, true);
    assert.equal(readMixture('no').value?.buffered, false);
  });

  it('asks to swap parts that stand the wrong way round', () => {
    assert.deepEqual(problemsOf('1:9', readMixture('1:9')), ['quantity/mixture-order [1:9] -> 9:1']);
    assert.equal(readMixture('1:9').value, undefined);
    assert.equal(readMixture('1:1').value?.parts?.anesthetic, 1);
  });

  it('refuses what is no mixture', () => {
    for (const text of ['9:0', '0:1'])
      assert.match(problemsOf(text, readMixture(text))[0]!, /not-positive\/zero/);
    for (const text of ['', '9', '9:1:1', '-9:1', 'maybe', '9:1 fresh'])
      assert.deepEqual(problemsOf(text, readMixture(text)), [`quantity/unreadable [${text}]`]);
  });
});
