import assert from 'node:assert/strict';
import { judge } from '../checks/tester.ts';
import type { Answer } from './generator/cues.ts';
import { generate, type Case } from './generator/generate.ts';
import { isWrong, reportOf } from './generator/report.ts';

/** Texts of each seed: 2,000 of each answer, or, where WHEAL_EXHAUSTIVE is set, 210,000 in all. */
const exhaustive = process.env['WHEAL_EXHAUSTIVE'] === '1';
const count = exhaustive ? 70_000 : 6_000;
const seeds = exhaustive ? [1, 2, 3] : [1];

/** How many texts of each answer were tried, and those that were read wrongly. */
function readAll(): ReadonlyMap<Answer, { tried: number; wrong: Case[] }> {
  const all = new Map(
    (['said', 'denied', 'unclear'] as const).map((answer) => [answer, { tried: 0, wrong: [] as Case[] }]),
  );
  for (const seed of seeds) {
    for (const one of generate(seed, count)) {
      const read = all.get(one.answer);
      if (read === undefined) continue;
      read.tried += 1;
      if (isWrong(one, judge(one.note).findings)) read.wrong.push(one);
    }
  }
  return all;
}

describe('texts of the clinic whose meaning is known', function () {
  this.timeout(600_000);
  let all: ReturnType<typeof readAll>;

  before(() => {
    all = readAll();
  });

  function assertRead(answer: Answer): void {
    const { tried, wrong } = all.get(answer) ?? { tried: 0, wrong: [] };
    assert.ok(tried >= 2_000, `only ${tried} texts were tried`);
    assert.ok(wrong.length === 0, reportOf(wrong, tried));
  }

  it('are not silent where a danger is said', () => {
    assertRead('said');
  });

  it('do not warn where a danger is surely denied', () => {
    assertRead('denied');
  });

  it('are not silent where a danger is left open, nor where the words that say it are in another order', () => {
    assertRead('unclear');
  });
});
