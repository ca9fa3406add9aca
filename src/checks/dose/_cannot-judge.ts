import { type DoseJudgement } from '../../dose/judge.ts';
import { kindText, mgText } from '../../dose/words.ts';
import { saysNotKnown } from '../../note/values/quantity.ts';
import type { Note } from '../../note/generated/types.ts';
import type { Range } from '../../note/tree/tree.ts';

export const adultFromMonths = 216;

/** Where to point for a missing weight; undefined where something is written that another finding is about. */
export function placeOfWeight({ patient, head }: Note): Range | undefined {
  if (patient === undefined) return head;
  if (patient.weight === undefined) return patient.keys.has('weight') ? undefined : patient.head;
  const { weight } = patient;
  return weight.pending || saysNotKnown(weight.text) ? weight : undefined;
}

export const doseText = ({ agents }: DoseJudgement): string =>
  agents
    .map(({ agent, epinephrine, mg }) => `${kindText(agent, epinephrine)} ${mgText(mg)} mg`)
    .join(' and ');
