import type { Leaf } from '../../note/tree/leaf.ts';
import { within, type Range } from '../../note/tree/tree.ts';
import type { Tables } from '../../practice/tables.ts';

/** A number in a free text that is a condition by itself: a blood pressure, an ejection fraction, a recent infarction. */
export interface Reading {
  /** The row of the table of cautions. */
  readonly name: string;
  readonly at: Range;
}

interface Pattern {
  readonly words: RegExp;
  readonly isSo: (match: RegExpMatchArray, readings: Tables['readings']) => boolean;
  readonly of: keyof Tables['readings'];
}

const monthsIn: Readonly<Record<string, number>> = { d: 1 / 30, w: 1 / 4.3, m: 1 };

const patterns: readonly Pattern[] = [
  {
    words: /\b(?:BP|blood pressure)\b[^.;\d]{0,12}(\d{2,3})s? ?\/ ?(\d{2,3})s?\b/gi,
    isSo: ([, systolic, diastolic], { pressure }) =>
      Number(systolic) >= pressure.systolic || Number(diastolic) >= pressure.diastolic,
    of: 'pressure',
  },
  {
    words: /\b(?:LV)?EF\b[^.;,\d]{0,8}(\d{2})\b/gi,
    isSo: ([, percent], { ejection }) => Number(percent) <= ejection.percent,
    of: 'ejection',
  },
  {
    words:
      /\b(?:MI|heart attack|N?STEMI|myocardial infarction|CABG)\b[^.;,\d]{0,10}(\d{1,2}) ?(d|w|m)(?:ays?|ee?ks?|ks?|onths?|os?)? ago\b/gi,
    isSo: ([, count, unit], { infarction }) =>
      Number(count) * monthsIn[unit!.toLowerCase()]! < infarction.months,
    of: 'infarction',
  },
];

/** Most texts have none of the words. */
const worthALook = /\b(?:BP|blood pressure|(?:LV)?EF|MI|heart attack|N?STEMI|infarction|CABG)\b/i;

/** The readings of a text that are a condition; of several of one kind the last one counts, as after a rest. */
export function readingsIn(leaf: Leaf<string>, { readings }: Tables): readonly Reading[] {
  const text = leaf.value;
  if (text === undefined || !worthALook.test(text)) return [];
  return patterns.flatMap(({ words, isSo, of }) => {
    const last = [...text.matchAll(words)].at(-1);
    if (last === undefined || !isSo(last, readings)) return [];
    return [{ name: readings[of].name, at: within(leaf.node, last.index, last.index + last[0].length) }];
  });
}
