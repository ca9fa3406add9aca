import assert from 'node:assert/strict';
import { agents } from '../../src/reference/agents.ts';
import { authorities } from '../../src/reference/authorities.ts';
import { creams } from '../../src/reference/creams.ts';
import { epinephrine } from '../../src/reference/epinephrine.ts';
import { infantReduction, limits, type LimitRow } from '../../src/reference/limits.ts';
import { weightRanges, weightsForAge } from '../../src/reference/weights-for-age.ts';
import { citation } from '../../src/reference/sources/index.ts';
import { rulesOf, advisoryCeilings } from '../../src/dose/rules.ts';
import { ceilingOf } from '../../src/limits/ceilings.ts';
import { catalogue } from '../../src/checks/index.ts';
import { bounded } from '../../src/checks/bounded.ts';
import { referenceTables } from '../../src/practice/tables.ts';

const nameOf = ({ agent, epinephrine: kind, authority, population }: LimitRow): string =>
  `${agent}${kind ? '+' : ''}, ${authority}, ${population.text}`;

describe('the table of limits', () => {
  it('has source, mark and date in every row, of known agents and authorities', () => {
    for (const row of [...limits, infantReduction, ...creams, ...Object.values(epinephrine)]) {
      assert.notEqual(citation(row.source), '');
      assert.match(row.mark, /^(Q|Q2|M|format)$/);
      assert.match(row.asOf, /^\d{4}(-\d\d-\d\d)?$/);
    }
    for (const row of limits) {
      assert.ok(
        agents.some(({ name }) => name === row.agent),
        nameOf(row),
      );
      assert.ok(
        authorities.some(({ name }) => name === row.authority),
        nameOf(row),
      );
      if (row.mgPerKgFrom !== undefined) assert.notEqual(citation(row.mgPerKgFrom), '');
    }
  });

  it('has a number in every row that advises nothing else', () => {
    for (const row of limits)
      assert.equal(
        row.notRecommended === true,
        row.mgPerKg === undefined && row.capMg === undefined,
        nameOf(row),
      );
  });

  it('has each row once', () => {
    const names = limits.map(nameOf);
    assert.equal(new Set(names).size, names.length);
  });

  it('lets a cap alone be no ceiling of an authority that a practice can choose', () => {
    for (const row of limits) {
      const authority = authorities.find(({ name }) => name === row.authority);
      if (authority?.choosable === true && row.mark === 'Q' && row.notRecommended !== true)
        assert.notEqual(row.mgPerKg, undefined, nameOf(row));
    }
  });

  it('judges by nothing that was not read in its source', () => {
    const ages = [1, 5, 8, 30, 60, 100, 150, 200, 500];
    for (const { name: authority } of authorities.filter(({ choosable }) => choosable)) {
      const tables = { ...referenceTables, authority };
      const rules = rulesOf(tables);
      for (const { name } of agents)
        for (const kind of [false, true])
          for (const months of ages) {
            const facts = { kg: 30, months };
            const ceiling = ceilingOf(rules, name, kind, facts);
            if (ceiling === undefined) continue;
            assert.equal(ceiling.limit.mark, 'Q', nameOf(ceiling.limit));
            for (const { limit } of advisoryCeilings(
              rules,
              { agent: name, epinephrine: kind, limit: ceiling.limit },
              facts,
              'others',
              tables,
            ))
              assert.notEqual(limit.authority, authority);
          }
    }
  });

  it('has no row that its mark makes useless', () => {
    const used = new Set(
      authorities
        .filter(({ choosable }) => choosable)
        .flatMap(({ name: authority }) => {
          const rules = rulesOf({ ...referenceTables, authority });
          return agents.flatMap(({ name }) =>
            [false, true].flatMap((kind) => {
              const { ladder, advisories, others } = rules.of(name, kind);
              return [...ladder.flatMap(({ rows }) => rows), ...advisories, ...others];
            }),
          );
        }),
    );
    const useless = limits.filter((row) => !used.has(row));
    assert.deepEqual(
      useless.map(
        (row) =>
          `${nameOf(row)}: with mark ${row.mark} it is neither a ceiling nor advice under any authority. ` +
          'Read it in its source and write mark Q, or take the row out of src/reference/limits.ts.',
      ),
      [],
    );
  });

  it('never allows a child more for each kg than an adult', () => {
    const rules = rulesOf(referenceTables);
    for (const { name } of agents)
      for (const kind of [false, true]) {
        const adult = ceilingOf(rules, name, kind, { kg: 30, months: 480 })?.limitMg ?? Infinity;
        for (const months of [2, 30, 100])
          assert.ok((ceilingOf(rules, name, kind, { kg: 30, months })?.limitMg ?? 0) <= adult, name);
      }
  });

  it('is as the design says where the US text has only a cap, and for children', () => {
    const rules = rulesOf(referenceTables);
    const mgPerKg = (agent: string, kind: boolean, months = 480): number | undefined =>
      ceilingOf(rules, agent, kind, { kg: 20, months })?.limit.mgPerKg;
    assert.equal(mgPerKg('bupivacaine', false), 2.5);
    assert.equal(mgPerKg('bupivacaine', true), 3);
    assert.equal(mgPerKg('mepivacaine', false), 7);
    assert.equal(mgPerKg('lidocaine', false, 143), 3);
    assert.equal(mgPerKg('lidocaine', false, 144), 4.5);
  });

  it('has weights that rise with age and with each percentile', () => {
    weightsForAge.forEach((row, at) => {
      for (const sex of ['boys', 'girls'] as const) {
        const five = row[sex];
        assert.deepEqual(
          [...five].sort((a, b) => a - b),
          [...five],
        );
        five.forEach((kg, percentile) => {
          assert.ok(kg >= (weightsForAge[at - 1]?.[sex][percentile] ?? 0), `${row.months} months`);
        });
      }
    });
  });

  // CDC growth charts, weight for age, data table; WHO child growth standards, weight for age.
  it('has the weights of the growth tables', () => {
    const of = (months: number): readonly number[] => {
      const row = weightsForAge.find((one) => one.months === months)!;
      return [row.boys[0], row.boys[2], row.boys[4], row.girls[0], row.girls[2], row.girls[4]];
    };
    assert.deepEqual(of(0), [2.5, 3.3, 4.3, 2.4, 3.2, 4.2]);
    assert.deepEqual(of(12), [7.8, 9.6, 11.8, 7.1, 8.9, 11.3]);
    assert.deepEqual(of(24), [10.4, 12.7, 15.6, 10, 12.1, 15]);
    assert.deepEqual(of(120), [24.2, 32.1, 49.4, 24, 33.1, 51.4]);
    assert.deepEqual(of(216), [51.7, 67.3, 97.2, 44.2, 56.2, 87.4]);
  });

  it('has ranges of weight without a gap that hold the usual weights', () => {
    assert.equal(weightRanges[0]?.fromMonths, 0);
    weightRanges.forEach(({ fromMonths, minKg, maxKg, usual }, at) => {
      assert.ok(fromMonths > (weightRanges[at - 1]?.fromMonths ?? -1));
      assert.ok(minKg <= usual.low && maxKg >= usual.high);
    });
  });
});

describe('marks', () => {
  it('bound how loud a check of the dose may be', () => {
    for (const check of catalogue.filter(({ code }) => code.startsWith('dose/')))
      assert.ok(
        check.sources.some(({ mark }) => bounded(check.severity, mark) === check.severity),
        check.code,
      );
  });

  it('never make a case louder', () => {
    assert.equal(bounded('information', 'Q'), 'information');
    assert.equal(bounded('error', 'Q2'), 'warning');
    assert.equal(bounded('warning', 'M'), 'information');
  });
});
