import { countedDays } from '../checks/quantity/relative-day.ts';
import type { AgentDose, DoseJudgement, Given } from '../dose/judge.ts';
import { injectedDoses, limitPer, type InjectedDose } from '../dose/injected.ts';
import { kindText, mgText, microgramsText, percentText } from '../dose/words.ts';
import type { Note } from '../note/generated/types.ts';
import type { Tables } from '../practice/tables.ts';
import type { Analysis } from './analysis/analysis.ts';
import { weekdayName } from './analysis/days.ts';

/** A few words that are shown after a value and are not part of the text. */
export interface Hint {
  readonly offset: number;
  readonly text: string;
  /** Where the words come from. Plain text. */
  readonly tooltip: string;
}

/** What follows from the values between two offsets: mg and share of the limit, epinephrine, planned days, weekdays. */
export function hintsIn({ note, judgement, context }: Analysis, start: number, end: number): readonly Hint[] {
  const dose = judgement.dose;
  const days = dose === null ? [] : [dose, ...dose.later];
  const injected = note === null ? [] : injectedDoses(note, context.tables).flatMap(injectedHint);
  const planned = note === null ? [] : plannedHints(note, context.tables);
  return [...days.flatMap((day) => day.given.map((one) => doseHint(day, one))), ...injected, ...planned]
    .filter(({ offset }) => offset >= start && offset <= end)
    .sort((a, b) => a.offset - b.offset);
}

/** The days that are counted, and the weekday of each written day on which stitches are to come out. */
function plannedHints(note: Note, tables: Tables): readonly Hint[] {
  const counted = countedDays(note, tables).map(({ at, day }) => ({
    offset: at.end,
    text: `${day}, ${weekdayName(day)}`,
    tooltip: 'The day that is meant',
  }));
  const written = (note.procedures ?? []).flatMap(({ suturesDue: due }) =>
    due?.value === undefined || !due.text.includes(due.value)
      ? []
      : [{ offset: due.end, text: weekdayName(due.value), tooltip: 'The weekday of this date' }],
  );
  return [...counted, ...written];
}

/** The mg of a drug that was injected, and its share of a session where a limit is known. */
function injectedHint({ entry, at, row, mg }: InjectedDose): readonly Hint[] {
  if (row === undefined || mg === undefined) return [];
  const limit = limitPer(row, 'session');
  const share = limit === undefined ? [] : [`${percentText(mg / limit.mg)}% of a session`];
  const offset = (entry.volume ?? at).end;
  return [
    { offset, text: [`${mgText(mg)} mg`, ...share].join(' · '), tooltip: `This injection of ${row.name}` },
  ];
}

function doseHint(day: DoseJudgement, one: Given): Hint {
  const group = day.agents.find(({ given }) => given.includes(one));
  const micrograms = one.epinephrineMicrograms;
  const parts = [
    `${mgText(one.mg)} mg`,
    ...(group === undefined ? [] : shareOf(one, group)),
    ...(micrograms > 0 ? [`${microgramsText(micrograms)} epinephrine`] : []),
  ];
  const kind = kindText(one.agent.name, one.withEpinephrine);
  const why = day.why === undefined ? '' : `; the dose is not judged: ${day.why}`;
  return { offset: one.at.end, text: parts.join(' · '), tooltip: `This injection of ${kind}${why}` };
}

/** The share of its own limit that one injection takes; nothing where no limit is known to hold it against. */
function shareOf({ mg }: Given, { limitMg }: AgentDose): readonly string[] {
  return limitMg === Infinity ? [] : [`${percentText(mg / limitMg)}% of limit`];
}
