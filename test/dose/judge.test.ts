import assert from 'node:assert/strict';
import { check } from '../../src/checks/index.ts';
import { readFileSync } from 'node:fs';
import { doseJson } from '../../src/dose/json.ts';
import { judgeDose, overLimit, type Step } from '../../src/dose/judge.ts';
import { stepsOfOne } from '../../src/dose/steps.ts';
import { readNote } from '../../src/note/read.ts';
import { referenceTables, type Tables } from '../../src/practice/tables.ts';
import { adult, doseOf } from './notes.ts';

const plain = (ml: number): string => `agent: lidocaine, concentration: 1%, volume: ${ml} mL`;
const withEpinephrine = (ml: number, ratio = '1:100,000'): string =>
  `agent: lidocaine, concentration: 1%, epinephrine: "${ratio}", volume: ${ml} mL`;

describe('the dose of a visit', () => {
  it('is that of the design for the example of the design', () => {
    const text = readFileSync(new URL('../fixtures/design-example.wheal.yaml', import.meta.url), 'utf8');
    const dose = judgeDose(readNote(text).value!, referenceTables);
    assert.deepEqual(doseJson(dose), {
      judged: true,
      fraction: 0.0311,
      epinephrineMicrograms: 13.5,
      agents: [
        {
          agent: 'lidocaine',
          epinephrine: true,
          mg: 13.5,
          mgPerKg: 0.218,
          limitMg: 434,
          boundBy: 'weight',
          fraction: 0.0311,
        },
      ],
    });
  });

  it('keeps plain and with epinephrine apart and adds their shares', () => {
    const { agents, fraction } = doseOf([plain(13.95), withEpinephrine(21.7)]);
    assert.deepEqual(
      agents.map(({ epinephrine, fraction: share }) => [epinephrine, share]),
      [
        [false, 0.5],
        [true, 0.5],
      ],
    );
    assert.equal(fraction, 1);
    assert.equal(overLimit(doseOf([plain(13.95), withEpinephrine(21.7)])), false);
    assert.equal(overLimit(doseOf([plain(13.95), withEpinephrine(21.71)])), true);
  });

  it('counts an injection for the visit, those of procedures and those of events of the same day', () => {
    const rest = `anesthetic: {${plain(1)}}\nevents:\n  - {on: 2026-03-02, kind: bleeding, anesthetic: {${plain(4)}}}\n  - {on: 2026-03-04, kind: bleeding, anesthetic: {${plain(8)}}}\n`;
    const dose = doseOf([plain(2)], { rest });
    assert.equal(dose.agents[0]!.mg, 70);
    assert.deepEqual(
      dose.later.map(({ day, agents }) => [day, agents[0]!.mg]),
      [['2026-03-04', 80]],
    );
  });

  it('goes by the age on the day of the event', () => {
    const rest = `events:\n  - {on: 2026-03-10, kind: bleeding, anesthetic: {${plain(1)}}}\n`;
    const dose = doseOf([plain(1)], { patient: 'id: C-1, born: 2014-03-09, weight: 40 kg', rest });
    assert.equal(dose.agents[0]!.limit.mgPerKg, 3);
    assert.equal(dose.later[0]!.agents[0]!.limit.mgPerKg, 4.5);
  });

  it('counts what was drawn of a buffered mixture, and all of it where no parts are written', () => {
    assert.equal(doseOf([`${plain(10)}, buffered: 9:1`]).agents[0]!.mg, 90);
    assert.equal(doseOf([`${plain(10)}, buffered: yes`]).agents[0]!.mg, 100);
    assert.ok(doseOf([`${plain(10)}, buffered: 1:9`]).atLeast * 279 >= 90 - 1e-9);
  });

  it('takes the plain limit with epinephrine weaker than 1:200,000 or long buffered', () => {
    const limit = (injection: string): number | undefined => doseOf([injection]).agents[0]?.limitMg;
    assert.equal(limit(withEpinephrine(1, '1:200,000')), 434);
    assert.equal(limit(withEpinephrine(1, '1:200,001')), 279);
    assert.equal(limit(`${withEpinephrine(1)}, buffered: 9:1, mixed-on: 2026-02-16`), 434);
    assert.equal(limit(`${withEpinephrine(1)}, buffered: 9:1, mixed-on: 2026-02-15`), 279);
    // A dilution by the bicarbonate itself is not a weaker solution as drawn.
    assert.equal(limit(`${withEpinephrine(1, '1:200,000')}, buffered: 9:1`), 434);
  });

  it('is judged without any anesthetic, and with one that has no limit of this kind', () => {
    assert.deepEqual(doseJson(doseOf([])), {
      judged: true,
      fraction: 0,
      epinephrineMicrograms: 0,
      agents: [],
    });
    const spray = doseOf(['agent: vapocoolant spray', 'agent: bacteriostatic saline, volume: 1 mL'], {
      patient: 'id: C-1',
    });
    assert.equal(spray.judged, true);
    assert.equal(spray.unlimited.length, 2);
  });

  it('gives a cream beside the sum', () => {
    const dose = doseOf(['agent: lidocaine-prilocaine cream, amount: 2 g', plain(2)]);
    assert.equal(dose.creams[0]?.grams, 2);
    assert.equal(dose.agents.length, 1);
    const byAmount = doseOf(['agent: lidocaine, concentration: 4%, amount: 2 g']);
    assert.equal(byAmount.creams[0]?.agent.name, 'lidocaine cream 4%');
  });

  describe('that cannot be judged', () => {
    const cases: readonly (readonly [string, string, RegExp])[] = [
      ['an agent that is not known', 'agent: lidokein, concentration: 1%, volume: 1 mL', /agent "lidokein"/],
      [
        'an agent like a key of every object',
        'agent: constructor, concentration: 1%, volume: 1 mL',
        /constructor/,
      ],
      ['a strength that is missing', 'agent: lidocaine, volume: 1 mL', /no concentration/],
      [
        'a volume that is pending',
        'agent: lidocaine, concentration: 1%, volume: ??',
        /volume.*not known yet/,
      ],
      ['a volume that is no volume', 'agent: lidocaine, concentration: 1%, volume: some', /"some"/],
      [
        'epinephrine that is pending',
        'agent: lidocaine, concentration: 1%, epinephrine: ??, volume: 1 mL',
        /epinephrine/,
      ],
      ['a product that is not in stock', 'product: lido, volume: 1 mL', /product "lido"/],
    ];
    for (const [name, injection, why] of cases)
      it(`has ${name}`, () => {
        const dose = doseOf([plain(2), injection]);
        assert.equal(dose.judged, false);
        assert.equal(dose.fraction, null);
        assert.match(dose.why ?? '', why);
        assert.deepEqual(dose.left, []);
        assert.equal((doseJson(dose) as { why: string }).why, dose.why);
      });

    it('is still over the limit where what can be read is', () => {
      assert.equal(overLimit(doseOf([plain(28), 'agent: lidocaine, concentration: 1%, volume: ??'])), true);
      assert.equal(overLimit(doseOf([plain(27), 'agent: lidocaine, concentration: 1%, volume: ??'])), false);
    });

    it('counts epinephrine that is not known for the higher limit, so that nothing is called over that may not be', () => {
      const unsure = (ml: number): string =>
        `agent: lidocaine, concentration: 1%, epinephrine: ??, volume: ${ml} mL`;
      assert.equal(overLimit(doseOf([unsure(43)])), false);
      assert.equal(overLimit(doseOf([unsure(44)])), true);
    });

    it('has no weight: then the cap is checked, and from which weight on it is in order', () => {
      const patient = 'id: C-1, age: 64 years';
      const dose = doseOf([plain(20)], { patient });
      assert.deepEqual([dose.judged, dose.why, dose.neededKg], [false, 'no weight', 44.5]);
      assert.equal(overLimit(dose), false);
      assert.equal(overLimit(doseOf([plain(30)], { patient })), false);
      assert.equal(overLimit(doseOf([plain(30.1)], { patient })), true);
      assert.equal(doseOf([plain(10), withEpinephrine(14)], { patient }).neededKg, 42.3);
    });

    it('has a weight under 50 kg and no age', () => {
      assert.equal(doseOf([plain(1)], { patient: 'id: C-1, weight: 49.9 kg' }).judged, false);
      const adultTaken = doseOf([plain(1)], { patient: 'id: C-1, weight: 50 kg' });
      assert.equal(adultTaken.judged, true);
      assert.ok(adultTaken.steps.some(({ text }) => text.includes('an adult is assumed')));
    });

    it('has no limit for such a patient', () => {
      const dose = doseOf(['agent: levobupivacaine, concentration: 0.25%, volume: 1 mL'], {
        patient: 'id: C-1, age: 3 years, weight: 14 kg',
      });
      assert.match(dose.why ?? '', /no limit is known for levobupivacaine/);
    });
  });

  describe('of children', () => {
    const child = 'id: C-1, age: 7 years, weight: 23 kg';

    it('is plain lidocaine 3 mg/kg under 12 years, never above the adult’s cap', () => {
      assert.equal(doseOf([plain(1)], { patient: child }).agents[0]!.limitMg, 69);
      const heavy = doseOf([plain(1)], { patient: 'id: C-1, age: 11 years, weight: 110 kg' });
      assert.equal(heavy.agents[0]!.limitMg, 300);
    });

    it('passes the guideline before the ceiling', () => {
      const passed = (ml: number): readonly string[] =>
        doseOf([plain(ml)], { patient: child }).advisories.map(({ limit }) => limit.authority);
      assert.deepEqual(passed(4.6), []);
      assert.deepEqual(passed(4.7), ['AAD guideline 2016']);
    });

    it('is advised 30% less of an amide under 6 months', () => {
      const infant = 'id: C-1, age: 5 months, weight: 7 kg';
      const authorities = (patient: string, ml: number): readonly string[] =>
        doseOf([plain(ml)], { patient }).advisories.map(({ limit }) => limit.population.text);
      // 3 mg/kg × 0.7 × 7 kg = 14.7 mg; the guideline's own 2 mg/kg is 14 mg.
      assert.ok(authorities(infant, 1.5).includes('under 6 months, 30% less'));
      assert.ok(!authorities(infant, 1.4).includes('under 6 months, 30% less'));
      assert.ok(
        !authorities('id: C-1, age: 6 months, weight: 7 kg', 1.5).includes('under 6 months, 30% less'),
      );
    });
  });

  describe('with a practice file', () => {
    const lidocaine = referenceTables.agents.find('lidocaine')!;
    const stocked: Tables = {
      ...referenceTables,
      stock: new Map([
        [
          'lido 1% epi',
          { name: 'lido 1% epi', agent: lidocaine, mgPerMl: 10, epinephrineMicrogramsPerMl: 10 },
        ],
      ]),
    };
    const row = { ...referenceTables.limits[0]!, source: 'practice-file', mark: 'format' } as const;

    it('a product stands for agent, strength and epinephrine', () => {
      const [dose] = doseOf(['product: Lido 1% Epi, volume: 2 mL'], { tables: stocked }).agents;
      assert.deepEqual([dose?.agent, dose?.epinephrine, dose?.mg], ['lidocaine', true, 20]);
    });

    it('says what is left of the stock before anything was given, and afterwards', () => {
      const left = (injections: readonly string[]): readonly unknown[] =>
        doseOf(injections, { tables: stocked }).left.map(({ product, ml }) => [product, ml]);
      assert.deepEqual(left([]), [['lido 1% epi', 43.4]]);
      assert.deepEqual(left([plain(13.95)]), [
        ['lidocaine 1%', 13.9],
        ['lido 1% epi', 21.7],
      ]);
      assert.deepEqual(doseOf([], { tables: stocked, patient: 'id: C-1' }).left, []);
    });

    it('a stricter limit counts at once, an approved one takes the place of the published', () => {
      const tables = (own: object): Tables => ({
        ...referenceTables,
        limits: [...referenceTables.limits, { ...row, ...own }],
      });
      const limit = (own: object): number => doseOf([plain(1)], { tables: tables(own) }).agents[0]!.limitMg;
      assert.equal(limit({ practice: 'stricter', mgPerKg: 3, capMg: 150 }), 150);
      assert.equal(limit({ practice: 'stricter', mgPerKg: 6, capMg: 500 }), 279);
      assert.equal(limit({ practice: 'approved', mgPerKg: 5, capMg: 400 }), 310);
    });
  });

  it('can be followed step by step', () => {
    const { steps } = doseOf([withEpinephrine(1.5)], { patient: adult });
    const texts = steps.map(({ text }) => text).join('\n');
    for (const part of [
      '1.5 mL × 10 mg/mL = 15 mg',
      '7 mg/kg × 62 kg = 434 mg',
      '3.5% of the limit',
      '15 mcg',
      'Left: 419 mg',
    ])
      assert.ok(texts.includes(part), `${part}\n\n${texts}`);
    assert.ok(steps.some(({ source }) => source === 'us-label-lidocaine'));
  });

  it('leaves of one injection’s product what the whole sum leaves of it', () => {
    const dose = doseOf([plain(3), withEpinephrine(1.5), withEpinephrine(0.7, '1:200,000')], {
      patient: adult,
    });
    const left = (steps: readonly Step[]): readonly string[] =>
      steps.flatMap(({ text }) => (text.startsWith('Left:') ? [text] : []));
    const ofEach = dose.given.flatMap((one) => left(stepsOfOne(dose, one, referenceTables)));
    assert.equal(new Set(ofEach).size, 3);
    assert.deepEqual(ofEach, left(dose.steps));
  });

  it('leaves nothing of a sum that cannot be judged', () => {
    const dose = doseOf([plain(3)], { patient: 'id: C-1, born: 1961-08-09' });
    const texts = stepsOfOne(dose, dose.given[0]!, referenceTables).map(({ text }) => text);
    assert.ok(texts.includes('Not judged: no weight'));
    assert.ok(!texts.some((text) => text.startsWith('Left:')));
  });

  it('says what of a share rounds to the limit on which side it is', () => {
    const fraction = (ml: number): number => (doseJson(doseOf([plain(ml)])) as { fraction: number }).fraction;
    assert.equal(fraction(27.9), 1);
    assert.equal(fraction(27.9003), 1.0001);
    assert.equal(fraction(27.8997), 0.9999);
  });

  it('is not judged where part of what was typed could not be counted', () => {
    const line = '{agent: lidocaine, concentration: 1%, volume: 2 mL';
    const note = (tail: string): string =>
      `visit: 2026-03-02\npatient: {id: C-1, born: 1961-08-09, weight: 62 kg}\nprocedures:\n  - site: nose\n    method: shave\n    anesthetic: ${line}${tail}`;
    const doseOf = (text: string): { judged: boolean; fraction: number | null } => {
      const { dose } = check(readNote(text), { tables: referenceTables, today: '2026-03-02' });
      return { judged: dose?.judged ?? false, fraction: dose?.fraction ?? null };
    };
    assert.equal(doseOf(note('}\n')).judged, true);
    // A second volume, a second document: either may hold more than was counted.
    for (const tail of [', volume: 20 mL}\n', '}\n---\nvisit: 2026-03-02\n'])
      assert.deepEqual(doseOf(note(tail)), { judged: false, fraction: null });
  });
});
