import { messageOf, type Judgement } from '../../checks/index.ts';
import type { Finding } from '../../note/tree/finding.ts';
import type { Note } from '../../note/generated/types.ts';
import { Lines } from '../../note/text/lines.ts';
import type { Source } from '../../note/read.ts';
import { formatNumber } from '../../note/values/format.ts';
import type { Tables } from '../../practice/tables.ts';
import { kindText } from '../../dose/words.ts';
import { plain } from '../one-line.ts';
import { caution } from '../caution.ts';
import { said } from '../from-note.ts';
import { doseOf } from './dose.ts';
import { headerOf } from './header.ts';
import type { NoSummary, Remark, SummaryModel } from './model.ts';
import { afterwardsOf, nextOf } from './next.ts';
import { factsOf } from './procedure.ts';

export interface SummaryContext {
  readonly tables: Tables;
  /** Where the practice file lies that was used. */
  readonly practice: string | undefined;
}

/** What a chart needs to know of one visit. Only what the note says: nothing is filled in. */
export function summaryOf(
  source: Source<Note>,
  judgement: Judgement,
  context: SummaryContext,
): SummaryModel | NoSummary {
  const remarks = remarksOf(source, judgement);
  const note = source.value;
  if (note === null) return { wheal: 1, readable: false, why: whyNot(remarks) };
  const errors = remarks.filter(({ severity }) => severity === 'error');
  return {
    wheal: 1,
    readable: true,
    header: headerOf(note),
    alerts: errors.length === 0 ? [] : [alertOf(errors)],
    procedures: (note.procedures ?? []).map((procedure, at) => ({
      title: `${at + 1}. ${titled(said(procedure.site) ?? 'site not recorded')}`,
      facts: factsOf(procedure, note, judgement.dose),
    })),
    dose: doseOf(note, judgement.dose),
    afterwards: afterwardsOf(note, judgement.dose),
    next: nextOf(note, context.tables),
    accepted: remarks.filter(({ accepted }) => accepted !== undefined),
    open: remarks.filter(
      ({ accepted, severity }) => accepted === undefined && (severity === 'error' || severity === 'warning'),
    ),
    practice: practiceOf(context),
    caution,
  };
}

const titled = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function remarksOf({ text }: Source<Note>, { findings }: Judgement): readonly Remark[] {
  const lines = new Lines(text);
  return findings.map((finding) => ({
    code: finding.code,
    severity: finding.severity,
    message: plain(messageOf(finding)),
    row: lines.at(finding.start).line + 1,
    ...acceptanceOf(finding),
  }));
}

const acceptanceOf = ({ accepted }: Finding): Pick<Remark, 'accepted'> =>
  accepted === undefined ? {} : { accepted: { reason: plain(accepted.reason), by: plain(accepted.by) } };

function alertOf(errors: readonly Remark[]): string {
  const count = errors.length === 1 ? 'an error' : `${errors.length} errors`;
  return `This note has ${count} and is not fit for the chart as it stands: ${errors.map(({ message }) => message).join(' ')}`;
}

/** The practice file, and who stands for each safety limit that it loosens. */
function practiceOf({ practice, tables }: SummaryContext): readonly string[] {
  return [
    ...(practice === undefined ? [] : [`Practice file: ${practice}.`]),
    ...tables.loosened.map(({ agent, epinephrine, mgPerKg, capMg, source, approval }) => {
      const limit = [
        ...(mgPerKg === undefined ? [] : [`${formatNumber(mgPerKg)} mg/kg`]),
        ...(capMg === undefined ? [] : [`${formatNumber(capMg)} mg`]),
      ].join(', ');
      const from = source === '' ? '' : ` Source: ${source}.`;
      return `Loosened limit of ${kindText(agent, epinephrine)}: ${limit}, approved by ${approval.by} on ${approval.on}: ${approval.reason}.${from}`;
    }),
  ].map(plain);
}

const whyNot = (remarks: readonly Remark[]): string =>
  remarks.find(({ severity }) => severity === 'error')?.message ?? 'There is no note in this file.';
