import { saysEnded } from '../../followup/events.ts';
import { readDate } from '../../note/values/dates.ts';
import { addDays } from '../../note/values/days.ts';
import { readCount } from '../../note/values/count.ts';
import type { IsoDate } from '../../note/values/values.ts';
import type { Tables } from '../../practice/tables.ts';
import { weekdayName } from '../analysis/days.ts';

/** Something that is offered as an answer; none is taken unless somebody chooses it. */
export interface Choice {
  readonly text: string;
  readonly detail: string;
}

/** What has to be asked before a line can be written. */
export interface Question {
  /** The key after which the answer is written. */
  readonly key: string;
  readonly kind: 'day' | 'count' | 'words' | 'ending' | 'event';
  readonly prompt: string;
  readonly example: string;
  /** Without an answer nothing is written; what else nobody says becomes `??`. */
  readonly required: boolean;
  readonly choices: readonly Choice[];
  /** The first day that can be meant. */
  readonly from: IsoDate | undefined;
}

/** Answers by the key of their question. */
export type Answers = ReadonlyMap<string, string>;

type Known = Pick<Question, 'key' | 'prompt'> & Partial<Question>;

const question = (own: Known): Question => ({
  ...{ kind: 'words', example: '', required: false, choices: [], from: undefined },
  ...own,
});

/** Asks for a day: today, yesterday and the day of the visit are offered where they are possible. */
export function askDay(
  key: string,
  prompt: string,
  today: IsoDate,
  visit: IsoDate | undefined,
  from: IsoDate | undefined = visit,
): Question {
  const offered: readonly (readonly [IsoDate | undefined, string])[] = [
    [today, 'today'],
    [addDays(today, -1), 'yesterday'],
    [visit, 'day of the visit'],
  ];
  const choices = new Map<IsoDate, Choice>();
  for (const [day, name] of offered)
    if (day !== undefined && day <= today && (from === undefined || day >= from) && !choices.has(day))
      choices.set(day, { text: day, detail: `${name}, ${weekdayName(day)}` });
  return question({
    ...{ key, prompt, kind: 'day', required: true, example: today, from },
    choices: [...choices.values()],
  });
}

export const askWords = (key: string, prompt: string, more: Partial<Question> = {}): Question =>
  question({ key, prompt, ...more });

export const askCount = (key: string, prompt: string): Question =>
  question({ key, prompt, kind: 'count', example: '2' });

/** Why an answer can't be written; undefined where it can. */
export function faultIn(
  { kind, required, from }: Question,
  answer: string,
  { tables, today }: { readonly tables: Tables; readonly today: IsoDate },
): string | undefined {
  const text = answer.trim();
  if (text === '' || text === '??')
    return required ? 'Nothing is written without it. Press Escape to leave the note as it is.' : undefined;
  if (kind === 'day') return dayFault(text, from, today);
  if (kind === 'count')
    return readCount(text).value === undefined ? 'Write a whole number, such as 2.' : undefined;
  if (kind === 'event' && tables.events.find(text) === undefined)
    return `This is no event that is known: ${text}.`;
  if (kind === 'ending' && !saysEnded(text))
    return 'This says that it has not ended yet, so it stays open. Write how it ended, or press Escape.';
  return undefined;
}

function dayFault(text: string, from: IsoDate | undefined, today: IsoDate): string | undefined {
  const { value } = readDate(text);
  if (value === undefined) return `Write the day as ${today}.`;
  if (value > today) return `This day is still to come: today is ${today}.`;
  return from !== undefined && value < from ? `This cannot have been before ${from}.` : undefined;
}
