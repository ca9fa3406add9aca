import { isOver } from '../../dose/arithmetic.ts';
import type { AgentDose, DoseJudgement, Given } from '../../dose/judge.ts';
import { allowedMgText, authorityText, bindingText, kindText, mgText } from '../../dose/words.ts';
import type { Injection } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';

/** The visit, and the later days on which more was given. */
export const daysOf = (dose: DoseJudgement): readonly DoseJudgement[] =>
  dose.later.length === 0 ? [dose] : [dose, ...dose.later];

/** Every injection and application of the note. */
export const injectionsOf = (dose: DoseJudgement): readonly Injection[] =>
  dose.later.length === 0 ? dose.injections : daysOf(dose).flatMap(({ injections }) => injections);

/** What a message calls the day, and with how many other notes it counts. */
export function dayText(day: DoseJudgement, visit: DoseJudgement): string {
  const name = day === visit ? 'the visit' : (day.day ?? 'that day');
  const notes = day.others?.notes ?? 0;
  if (day.others === undefined || day.others.sums.length === 0) return name;
  return `${name} together with ${notes === 1 ? 'another note' : `${notes} other notes`} of this patient on that day`;
}

/** The share of the limit that other notes of the day take. */
export function shareElsewhere(day: DoseJudgement): number {
  if (day.others === undefined || day.others.sums.length === 0) return 0;
  return Math.max(
    0,
    day.given.reduce((rest, one) => rest - shareOf(one, day), day.atLeast),
  );
}

/** Each agent with its amount, its limit and what binds. */
export const sumText = ({ agents, facts }: DoseJudgement, { authority }: Tables): string =>
  agents.map((one) => agentText(one, facts.kg, authority)).join(' and ');

function agentText(
  { agent, epinephrine, mg, limitMg, limit, boundBy }: AgentDose,
  kg: number | undefined,
  authority: string,
): string {
  const name = kindText(agent, epinephrine);
  if (limitMg === Infinity) return `${name} ${mgText(mg)} mg`;
  const from = `${bindingText(limit, boundBy, kg)}, ${authorityText(limit, boundBy, authority)}`;
  return `${name} ${mgText(mg)} mg of at most ${allowedMgText(limitMg)} mg (${from})`;
}

/** The injection with which a running sum passes a bound; the last one where none does. */
export function crossing(
  given: readonly Given[],
  share: (one: Given) => number,
  bound: number,
): Given | undefined {
  let sum = 0;
  for (const one of given) {
    sum += share(one);
    if (isOver(sum, bound)) return one;
  }
  return given.at(-1);
}

/** The share of its own limit that one injection takes. */
export function shareOf(one: Given, { agents }: DoseJudgement): number {
  const dose = agents.find(({ given }) => given.includes(one));
  return dose === undefined ? 0 : one.mg / dose.limitMg;
}
