import { caution } from '../../documents/caution.ts';
import { maxDose, type DoseQuery, type MaxDose } from '../../dose/max.ts';
import { missedRange } from '../../dose/patient.ts';
import {
  authorityText,
  bindingSource,
  bindingText,
  epinephrineText,
  strengthText,
} from '../../dose/words.ts';
import { formatNumber } from '../../note/values/format.ts';
import { readers } from '../../note/values/readers.ts';
import type { Tables } from '../../practice/tables.ts';
import { citation } from '../../reference/sources/index.ts';

/** The most that may be injected, in words. */
export interface DoseAnswer {
  readonly headline: string;
  /** How it comes about, what else is advised, and for whom it holds. */
  readonly detail: string;
}

/** Answers before the needle, or says why no maximum can be given. */
export function doseAnswer(query: DoseQuery, tables: Tables): DoseAnswer | { readonly why: string } {
  const max = maxDose(query, tables);
  if ('why' in max) return max;
  const { agent, mgPerMl, epinephrineMicrogramsPerMl: epinephrine } = query;
  const added = epinephrine > 0 ? ` with epinephrine ${epinephrineText(epinephrine)}` : '';
  return {
    headline: `${agent.name} ${strengthText(mgPerMl)}${added}: at most ${formatNumber(max.maxMl)} mL (${formatNumber(max.maxMg)} mg)`,
    detail: detailOf(query, max, tables).join('\n'),
  };
}

function detailOf(query: DoseQuery, max: MaxDose, tables: Tables): readonly string[] {
  const { limit, boundBy } = max;
  const range = missedRange(query, tables.weightRanges);
  return [
    `Bound by ${bindingText(limit, boundBy, query.kg)}, ${authorityText(limit, boundBy, tables.authority)}.`,
    `Source: ${citation(bindingSource(limit, boundBy))}, as of ${limit.asOf}.`,
    ...max.steps.map(({ text }) => text),
    ...max.advisories.map((one) =>
      one.limit.notRecommended === true
        ? `Not recommended: ${one.limit.authority}, ${one.limit.population.text}.`
        : `Advised: ${formatNumber(one.maxMl)} mL (${formatNumber(one.maxMg)} mg), ${one.limit.authority}, ${one.limit.population.text}.`,
    ),
    ...(range === undefined
      ? []
      : [
          `Check weight and age: ${formatNumber(range.usual.low)} to ${formatNumber(range.usual.high)} kg is usual at that age.`,
        ]),
    ...(max.assumedAdult ? ['No age was given: an adult is assumed.'] : []),
    `This holds for a healthy patient who has had no other local anesthetic today. ${caution}`,
  ];
}

export interface ReadText {
  /** Undefined where the text can't be read. */
  readonly value: unknown;
  /** Whether the value is out of all proportion. */
  readonly odd: boolean;
}

/** A typed answer by the reader of the same kind of value in a note. */
export function readText(reader: string, key: string, text: string): ReadText {
  const { value, problems } = readers.get(reader)?.(text.trim(), key) ?? { value: undefined, problems: [] };
  return { value, odd: problems.some(({ code }) => code === 'quantity/implausible') };
}

/** An age in months as people say it, never older than it is. */
export const ageText = (months: number): string =>
  months < 24 ? `${months} months` : `${Math.floor(months / 12)} years`;
