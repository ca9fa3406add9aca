import { saysNothing } from '../../followup/results.ts';
import type { Result } from '../../note/generated/types.ts';
import { phrasesOf } from '../../note/words/phrases.ts';
import { within } from '../../note/tree/tree.ts';
import type { Check, Report, Subject } from '../check.ts';
import { isAnyLate, lateOf, lateReport, sameSpecimen, type Late } from './_plan.ts';

const format = { source: 'format', mark: 'format' } as const;
const loop = { source: 'closed-loop', mark: 'Q' } as const;

/** From how many days past its limit on an open end is an error. */
const far = 28;

/** Of the results that one container still owes the one that is late by most days: they are asked for in one call. */
const latestOfEach = (late: readonly Late[]): readonly Late[] =>
  late.filter(
    (one, at) =>
      !late.some(
        (other, place) =>
          sameSpecimen(one.item, other.item) &&
          (other.days > one.days || (other.days === one.days && place < at)),
      ),
  );

/** Of every melanoma something follows: an excision, or at least an examination of the skin. */
function afterMelanoma({ diagnosis, next }: Result, { tables }: Subject): Report | undefined {
  if (diagnosis?.value === undefined || next?.value === undefined || !saysNothing(next.value))
    return undefined;
  const mention = phrasesOf(tables.followUp.findings)
    .mentionsIn(diagnosis.value)
    .find(({ row, standing }) => row.name === 'melanoma' && standing === 'asserted');
  if (mention === undefined) return undefined;
  const related = [{ ...within(diagnosis.node, mention.from, mention.to), form: 'diagnosis', args: {} }];
  return { at: next, form: 'nothing', args: { name: mention.row.name }, related };
}

function nothingAfterMelanoma(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const { specimen } of subject.note.procedures ?? [])
    for (const { results } of specimen ?? [])
      for (const result of results ?? []) {
        const report = afterMelanoma(result, subject);
        if (report !== undefined) found.push(report);
      }
  return found;
}

export const checks: readonly Check[] = [
  {
    code: 'follow-up/specimen-not-sent',
    when: isAnyLate,
    severity: 'warning',
    title: 'A specimen of which nobody wrote that it was sent',
    why: 'A container that stays in the room has no result, and nobody waits for one.',
    sources: [loop, { source: 'insurer-tips', mark: 'Q' }],
    messages: {
      main: 'The note does not say that {name} was sent, and it should have left by {to}. Look for the container, call the laboratory, and write `sent`.',
    },
    find: (subject) => lateOf(subject, 'specimen to send').map((late) => lateReport(late)),
  },
  {
    code: 'follow-up/result-overdue',
    when: isAnyLate,
    severity: 'error',
    milder: { main: 'warning' },
    title: 'A result that is overdue',
    why: 'A result that never comes is missed by nobody unless somebody waits for it. Four weeks past its limit it is an error.',
    sources: [
      loop,
      { source: 'result-follow-up', mark: 'Q' },
      { source: 'result-leaflets', mark: 'Q' },
      format,
    ],
    messages: {
      main: 'No result of {name} is in the note; it was to be there by {to}, {late} ago. Call the laboratory, and write what came under `results`.',
      far: 'Still no result of {name}: it was to be there by {to}, {late} ago. The specimen may be lost. Call the laboratory and the patient today.',
    },
    find(subject) {
      const unsent = lateOf(subject, 'specimen to send');
      return latestOfEach(lateOf(subject, 'result'))
        .filter(({ item }) => !unsent.some((one) => sameSpecimen(one.item, item)))
        .map((late) => lateReport(late, { form: late.days >= far ? 'far' : 'main' }));
    },
  },
  {
    code: 'follow-up/not-told',
    when: isAnyLate,
    severity: 'error',
    milder: { main: 'warning' },
    title: 'A result that the patient has not been told',
    why: 'No news is not good news to a patient who waits. A cancer that nobody told grows on; from four weeks on any untold result is an error.',
    sources: [loop, { source: 'result-follow-up', mark: 'Q' }, format],
    messages: {
      main: 'The result of {name} is there, and the note does not say that the patient was told; that was due by {to}. Call, and write `told` with day, name and way.',
      urgent:
        'The result of {name} cannot wait, and the note does not say that the patient was told; that was due by {to}. Call today, and write `told` with day, name and way.',
      far: 'The result of {name} has not been told for {late} past {to}. Call today, and write `told` with day, name and way.',
    },
    find: (subject) =>
      lateOf(subject, 'telling the patient')
        .filter(({ item }) => item.what === undefined)
        .map((late) =>
          lateReport(late, { form: late.item.urgent ? 'urgent' : late.days >= far ? 'far' : 'main' }),
        ),
  },
  {
    code: 'follow-up/attempts-only',
    when: isAnyLate,
    severity: 'error',
    milder: { main: 'warning' },
    title: 'The patient was tried, and not reached',
    why: 'A voicemail tells nobody for sure. Where the telephone fails, a letter with proof of delivery or the family doctor may not.',
    sources: [loop, { source: 'result-follow-up', mark: 'Q' }, format],
    messages: {
      main: 'The patient does not know the result of {name}: {what}. It was to be told by {to}. Try another way, and write when the patient was told.',
      urgent:
        'The patient does not know the result of {name}, which cannot wait: {what}. It was to be told by {to}. Try another way today.',
    },
    find: (subject) =>
      lateOf(subject, 'telling the patient')
        .filter(({ item }) => item.what !== undefined)
        .map((late) => lateReport(late, { form: late.item.urgent || late.days >= far ? 'urgent' : 'main' })),
  },
  {
    code: 'follow-up/no-plan',
    severity: 'warning',
    title: 'A diagnosis that asks for a plan, and none in the note',
    why: 'The patient knows, and everybody thinks that somebody else has made the appointment.',
    sources: [loop, { source: 'insurer-tips', mark: 'Q' }, format],
    messages: {
      main: 'This diagnosis asks for a plan, and the note has none. Write what happens under `next`, or `none needed`.',
      nothing:
        'The diagnosis is {name}, and the note says that nothing is to be done. If that is not so, write what happens; if it was decided, accept this with the reason.',
      diagnosis: 'the diagnosis',
    },
    find: (subject) => [
      ...lateOf(subject, 'next step')
        .filter(({ item }) => item.unplanned)
        .map((late) => lateReport(late)),
      ...nothingAfterMelanoma(subject),
    ],
  },
  {
    code: 'follow-up/step-not-done',
    when: isAnyLate,
    severity: 'warning',
    title: 'A next step of which nobody wrote that it was done',
    why: 'Of patients who needed an excision some never came back. A step is closed when the note says that it was taken.',
    sources: [loop, { source: 'lost-to-follow-up', mark: 'Q' }, format],
    messages: {
      main: 'Nothing says that this was done: {what}. It was due by {to}, {late} ago. Write `done` with the day, or plan it anew under `next` with a date.',
    },
    find: (subject) =>
      lateOf(subject, 'next step')
        .filter(({ item }) => !item.unplanned)
        .map((late) => lateReport(late)),
  },
];
