import type { Report } from '../../note/tree/finding.ts';
import { isAtLeast, isOver } from '../../dose/arithmetic.ts';
import type { DoseJudgement } from '../../dose/judge.ts';
import { rulesOf } from '../../dose/rules.ts';
import { ceilingOf } from '../../limits/ceilings.ts';
import { epinephrineText } from '../../dose/words.ts';
import type { Tables } from '../../practice/tables.ts';
import type { SourcesDiffer, Subject } from '../check.ts';
import { daysOf } from './_days.ts';

export const sourcesDiffer: SourcesDiffer = {
  how: 'A study found more than 90% of the epinephrine left in buffered stock after two weeks in the cold; other pages report a quarter lost in each week. The study is followed.',
  settings: ['severities'],
};

/** From this share of the plain limit on it matters that the higher one does not count. */
export const matters = 0.8;

/** Whether the plain limit that counts is lower than the one that the epinephrine would have unlocked. */
export function makesADifference(agent: string, day: DoseJudgement, tables: Tables): boolean {
  const rules = rulesOf(tables);
  const plain = ceilingOf(rules, agent, false, day.facts)?.limitMg ?? Infinity;
  const higher = ceilingOf(rules, agent, true, day.facts)?.limitMg ?? plain;
  return isOver(higher, plain);
}

export function doesNotUnlock({ dose, tables }: Subject): readonly Report[] {
  const found: Report[] = [];
  const { unlocksFrom, bufferedDays } = tables.epinephrine;
  for (const day of daysOf(dose)) {
    const locked = day.given.find((one) => one.locked !== undefined);
    if (locked?.locked === undefined || !isAtLeast(day.atLeast, matters)) continue;
    if (!makesADifference(locked.agent.name, day, tables)) continue;
    const { injection } = locked;
    const at = locked.locked === 'stale' ? injection.mixedOn : (injection.epinephrine ?? injection.product);
    found.push({
      at: at ?? locked.at,
      form: locked.locked,
      args: {
        drawn: epinephrineText(locked.drawnMicrogramsPerMl),
        weakest: epinephrineText(unlocksFrom.microgramsPerMl),
        days: bufferedDays.days,
        agent: locked.agent.name,
      },
    });
  }
  return found;
}
