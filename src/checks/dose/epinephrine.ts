import { isAtLeast, isOver } from '../../dose/arithmetic.ts';
import type { DoseJudgement } from '../../dose/judge.ts';
import { epinephrineOf, productOf } from '../../dose/injections.ts';
import { rulesOf } from '../../dose/rules.ts';
import { ceilingOf } from '../../limits/ceilings.ts';
import { epinephrineText } from '../../dose/words.ts';
import { formatNumber } from '../../note/values/format.ts';
import { daysBetween } from '../../note/values/days.ts';
import type { Note } from '../../note/generated/types.ts';
import { phrasesOf } from '../../note/words/phrases.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Check, Report, Subject } from '../check.ts';
import { crossing, dayText, daysOf, injectionsOf } from './_days.ts';

/** From this share of the plain limit on it matters that the higher one does not count. */
const matters = 0.8;

function hasCardiacDisease({ patient }: Note, { cardiacConditions }: Tables): boolean {
  const phrases = phrasesOf(cardiacConditions);
  return (patient?.conditions ?? []).some(({ value }) =>
    phrases.mentionsIn(value ?? '').some(({ standing }) => standing === 'asserted' || standing === 'past'),
  );
}

function total({ note, dose, tables }: Subject): readonly Report[] {
  const found: Report[] = [];
  const { healthy, cardiac } = tables.epinephrine;
  for (const day of daysOf(dose)) {
    if (!isOver(day.epinephrineMicrograms, cardiac.micrograms)) continue;
    const sick = hasCardiacDisease(note, tables);
    const bound = sick ? cardiac : healthy;
    if (!isOver(day.epinephrineMicrograms, bound.micrograms)) continue;
    const at = crossing(day.given, (one) => one.epinephrineMicrograms, bound.micrograms);
    if (at === undefined) continue;
    found.push({
      at: at.at,
      severity: sick ? 'warning' : 'information',
      form: sick ? 'cardiac' : 'main',
      args: {
        day: dayText(day, dose),
        total: formatNumber(day.epinephrineMicrograms, 2),
        most: bound.micrograms,
      },
    });
  }
  return found;
}

function tooStrong({ dose, tables }: Subject): readonly Report[] {
  const found: Report[] = [];
  const { microgramsPerMl } = tables.epinephrine.strongest;
  for (const injection of injectionsOf(dose)) {
    const { drawn } = epinephrineOf(injection, productOf(injection, tables));
    if (!isOver(drawn, microgramsPerMl)) continue;
    const at = injection.epinephrine ?? injection.product ?? injection.head;
    found.push({ at, args: { drawn: epinephrineText(drawn), strongest: epinephrineText(microgramsPerMl) } });
  }
  return found;
}

/** Whether the plain limit that counts is lower than the one that the epinephrine would have unlocked. */
function makesADifference(agent: string, day: DoseJudgement, tables: Tables): boolean {
  const rules = rulesOf(tables);
  const plain = ceilingOf(rules, agent, false, day.facts)?.limitMg ?? Infinity;
  const higher = ceilingOf(rules, agent, true, day.facts)?.limitMg ?? plain;
  return isOver(higher, plain);
}

function doesNotUnlock({ dose, tables }: Subject): readonly Report[] {
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

/** Buffered stock past its days, where nothing else is said about the day on which it was mixed. */
function bufferedOld(subject: Subject): readonly Report[] {
  const { dose, note, tables } = subject;
  const { days: most } = tables.epinephrine.bufferedDays;
  const found: Report[] = [];
  for (const day of daysOf(dose)) {
    const on = day.day ?? note.visit?.value?.date;
    for (const { mixedOn } of day.injections) {
      if (mixedOn?.value === undefined || on === undefined) continue;
      const days = daysBetween(mixedOn.value, on);
      if (days > most) found.push({ at: mixedOn, args: { days, most } });
    }
  }
  const told = found.length === 0 ? [] : doesNotUnlock(subject);
  return found.filter(({ at }) => !told.some((one) => one.at.start === at.start));
}

export const checks: readonly Check[] = [
  {
    code: 'dose/buffered-old',
    about: ['mixed-on'],
    severity: 'information',
    title: 'Buffered stock past its days',
    why: 'A buffered solution loses what is in it as it stands. A study found more than 90% of both drugs left after two weeks in the cold, and 82% of the epinephrine after four; at room temperature it was nearly gone.',
    sources: [{ source: 'buffered-stability', mark: 'Q' }],
    messages: {
      main: 'This was buffered {days} days before it was used; a study held it good for {most} days in the cold. Mix it fresh, and set the rest aside.',
    },
    find: bufferedOld,
  },
  {
    code: 'dose/epinephrine-total',
    severity: 'information',
    title: 'Much epinephrine in one visit',
    why: 'Epinephrine raises pulse and blood pressure. The maxima are those of dental teaching; the medical labels name none.',
    sources: [
      { source: 'epinephrine-dental-course', mark: 'Q' },
      { source: 'epinephrine-cardiac-dental', mark: 'Q' },
    ],
    messages: {
      main: '{total} µg of epinephrine in {day} is more than {most} µg, a maximum of dental teaching for healthy adults.',
      cardiac:
        '{total} µg of epinephrine in {day} is more than {most} µg, a maximum of dental teaching with cardiac disease. Weigh a weaker or plain solution.',
    },
    find: total,
  },
  {
    code: 'dose/epinephrine-too-strong',
    about: ['epinephrine', 'product', 'agent'],
    severity: 'error',
    title: 'Epinephrine stronger than any local anesthetic holds',
    why: 'A slip of one digit is ten times the epinephrine. Local anesthetics are made with 1:50,000 at the strongest.',
    sources: [
      { source: 'epinephrine-strengths', mark: 'Q' },
      { source: 'format', mark: 'format' },
    ],
    messages: {
      main: 'Epinephrine {drawn} is stronger than {strongest}, the strongest that is made with a local anesthetic. Check the ratio on the vial.',
    },
    find: tooStrong,
  },
  {
    code: 'dose/epinephrine-does-not-unlock',
    severity: 'information',
    title: 'Epinephrine that does not allow the higher limit',
    why: 'The higher limits were published with epinephrine 1:200,000 and stronger, and a buffered solution loses epinephrine as it stands.',
    sources: [
      { source: 'epinephrine-strengths', mark: 'Q' },
      { source: 'buffered-stability', mark: 'Q' },
    ],
    messages: {
      weak: 'Epinephrine {drawn} is weaker than {weakest}, so the limit of plain {agent} counts here.',
      stale:
        'This was buffered more than {days} days before, and epinephrine is lost by then, so the limit of plain {agent} counts here.',
    },
    find: doesNotUnlock,
  },
];
