import { messageOf, type Judgement } from '../../checks/index.ts';
import type { Finding } from '../../note/tree/finding.ts';
import type { Note } from '../../note/generated/types.ts';
import { Lines } from '../../note/text/lines.ts';
import type { Source } from '../../note/read.ts';
import type { DoseJudgement } from '../../dose/judge.ts';
import { planOf } from '../../followup/schedule.ts';
import { dosePicture } from '../pictures/dose.ts';
import { placePicture } from '../pictures/place.ts';
import { timePicture } from '../pictures/time.ts';
import { plain } from '../one-line.ts';
import { caution } from '../caution.ts';
import { said } from '../from-note.ts';
import { doseOf } from './dose.ts';
import { headerOf } from './header.ts';
import { practiceOf } from './practice.ts';
import { factOf, questionOf } from './questions.ts';
import type { NoSummary, Remark, SummaryContext, SummaryModel, SummaryPictures } from './model.ts';
import { afterwardsOf, nextOf } from './next.ts';
import { factsOf } from './procedure.ts';

/** What a chart needs to know of one visit. Only what the note says: nothing is filled in. */
export function summaryOf(
  source: Source<Note>,
  judgement: Judgement,
  context: SummaryContext,
): SummaryModel | NoSummary {
  const note = source.value;
  const { findings, dose } = judgement;
  if (note === null) return { wheal: 1, readable: false, why: whyNot(findings) };
  const lines = new Lines(source.text);
  const open = findings.filter(isOpen);
  const remarks = (some: readonly Finding[]): readonly Remark[] => some.map((one) => remarkOf(one, lines));
  return {
    wheal: 1,
    readable: true,
    header: headerOf(note, context),
    asOf: context.today,
    alerts: alertsOf(findings),
    procedures: (note.procedures ?? []).map((procedure, at) => ({
      title: `${at + 1}. ${titled(said(procedure.site) ?? 'site not recorded')}`,
      facts: factsOf(procedure, note, dose, context.tables),
    })),
    dose: doseOf(note, dose, context.tables),
    afterwards: afterwardsOf(note, dose, context.tables),
    next: nextOf(note, context.tables),
    accepted: remarks(findings.filter(({ accepted }) => accepted !== undefined)),
    open: remarks(open),
    questions: questionsOf(open),
    practice: practiceOf(context),
    caution,
    pictures: () => picturesOf(note, dose, context),
  };
}

function picturesOf(
  note: Note,
  dose: DoseJudgement | null,
  { tables, today }: SummaryContext,
): SummaryPictures {
  return {
    place: placePicture(note, tables),
    dose: dose === null ? undefined : dosePicture(dose, tables),
    time: timePicture({ visit: note.visit?.value?.date, plan: planOf(note, tables), today }),
  };
}

const titled = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function remarkOf(finding: Finding, lines: Lines): Remark {
  return {
    code: finding.code,
    severity: finding.severity,
    message: plain(messageOf(finding)),
    fact: plain(factOf(finding)),
    row: lines.at(finding.start).line + 1,
    ...acceptanceOf(finding),
  };
}

const acceptanceOf = ({ accepted }: Finding): Pick<Remark, 'accepted'> =>
  accepted === undefined ? {} : { accepted: { reason: plain(accepted.reason), by: plain(accepted.by) } };

const isOpen = ({ accepted, severity }: Finding): boolean =>
  accepted === undefined && (severity === 'error' || severity === 'warning');

/** Each question once, those about errors first. */
const questionsOf = (open: readonly Finding[]): readonly string[] => [
  ...new Set(
    [...open.filter(isError), ...open.filter((one) => !isError(one))].map((one) => plain(questionOf(one))),
  ),
];

const isError = ({ severity }: Finding): boolean => severity === 'error';

/** Errors of the record itself; what is late after the visit is asked for below and makes no record unfit. */
function alertsOf(findings: readonly Finding[]): readonly string[] {
  const grave = findings.filter((one) => isError(one) && !one.code.startsWith('follow-up/'));
  const open = questionsOf(grave.filter(({ accepted }) => accepted === undefined));
  const settled = grave.filter(({ accepted }) => accepted !== undefined).map((one) => plain(factOf(one)));
  return [
    ...(open.length === 0 ? [] : [`To be settled before this note is relied on: ${open.join(' ')}`]),
    ...(settled.length === 0 ? [] : [`Accepted, with the reason below: ${settled.join(' ')}`]),
  ];
}

function whyNot(findings: readonly Finding[]): string {
  const error = findings.find(isError);
  return error === undefined ? 'There is no note in this file.' : plain(messageOf(error));
}
