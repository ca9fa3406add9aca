import type { DoseJudgement, Step } from '../../dose/judge.ts';
import { creamStep, stepsOfOne } from '../../dose/steps.ts';
import type { Injection } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Section } from './section.ts';

/** The sum of the injection that is at an offset, step by step; undefined where none is there. */
export function doseSection(
  visit: DoseJudgement | null,
  offset: number,
  tables: Tables,
): Section | undefined {
  for (const dose of visit === null ? [] : [visit, ...visit.later]) {
    const injection = dose.injections.find(({ start, end }) => offset >= start && offset <= end);
    if (injection !== undefined)
      return { title: 'The dose, step by step', rows: stepsFor(dose, injection, tables) };
  }
  return undefined;
}

function stepsFor(dose: DoseJudgement, injection: Injection, tables: Tables): readonly Step[] {
  const given = dose.given.find((one) => one.injection === injection);
  if (given !== undefined) return stepsOfOne(dose, given, tables);
  const cream = dose.creams.find(({ applied }) => applied.some((one) => one.injection === injection));
  if (cream !== undefined) return [creamStep(cream)];
  const unlimited = dose.unlimited.find((one) => one.injection === injection);
  if (unlimited !== undefined)
    return [
      {
        text: `${unlimited.agent.name}: no dose limit of this kind`,
        source: unlimited.agent.source,
        mark: unlimited.agent.mark,
      },
    ];
  const unread = dose.unread.find((one) => one.injection === injection);
  return [{ text: `Not counted: the ${unread?.what ?? 'entry'} is missing, or can’t be read` }];
}
