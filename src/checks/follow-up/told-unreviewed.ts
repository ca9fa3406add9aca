import { loopsOf, type Loop } from '../../followup/loops.ts';
import type { Finding, Report } from '../../note/tree/finding.ts';
import type { Note } from '../../note/generated/types.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import { plainWord } from '../../note/words/word-table.ts';
import type { Check } from '../check.ts';
import { dateIn } from '../record/_dates.ts';
import { format } from '../sources.ts';
import { loop as closedLoop } from './_results.ts';

const notReviewed = /^(?:no(?:t|body|ne)?|n|false|pending|open|awaiting|to be)\b/i;

const isSame = (one: string | undefined, other: string | undefined): boolean =>
  one !== undefined && other !== undefined && plainWord(one) === plainWord(other);

/** Whether the clinician told the patient, who then knows the result. */
const isToldByClinician = ({ result }: Loop, { clinician }: Note): boolean =>
  (result.told ?? []).some(({ by }) => isSame(by?.value, clinician?.value));

/** What is wrong with the review of a result that somebody told. */
function judge(loop: Loop, note: Note): Report | undefined {
  const { reviewed, head, keys } = loop.result;
  if (loop.told === undefined || isToldByClinician(loop, note)) return undefined;
  if (reviewed === undefined) return keys.has('reviewed') ? undefined : { at: head };
  return reviewed.value === undefined ? undefined : (byWhom(reviewed, note) ?? tooLate(loop));
}

/** A review that is still to come, or that the scribe made. */
function byWhom(reviewed: Leaf<string>, { scribe, clinician }: Note): Report | undefined {
  const who = reviewed.value ?? '';
  if (notReviewed.test(who.trim())) return { at: reviewed, form: 'denied' };
  return isSame(who, scribe?.value) && !isSame(who, clinician?.value)
    ? { at: reviewed, form: 'scribe', args: { who } }
    : undefined;
}

/** A review that is dated after the patient heard the result. */
function tooLate({ result, told: heard }: Loop): Report | undefined {
  const reviewed = dateIn(result.reviewed);
  const at = result.told?.find(({ on }) => on?.value === heard)?.on;
  if (reviewed?.value === undefined || at?.value === undefined || at.value >= reviewed.value)
    return undefined;
  const related = [{ start: reviewed.start, end: reviewed.end, form: 'reviewed', args: {} }];
  return { at, form: 'before', args: { told: at.value, reviewed: reviewed.value }, related };
}

export const check: Check = {
  code: 'follow-up/told-unreviewed',
  severity: 'warning',
  misses: ({ form }: Finding) => (form === 'main' ? 'reviewed' : undefined),
  title: 'A result that was told before a clinician had read it',
  why: 'Whoever tells the patient a report that no clinician has read may miss that it needs a step, or that it is another patient’s.',
  sources: [closedLoop, { source: 'result-follow-up', mark: 'Q' }, format],
  messages: {
    main: 'The patient was told this result, and the note does not say that a clinician has read it. Write `reviewed` with the initials and the day, once it is so.',
    denied: 'The patient was told this result, and it is not reviewed yet. Have the clinician read it today.',
    scribe:
      'The patient was told this result, and {who}, who reviewed it, is the scribe. Have the clinician read it.',
    before:
      'The patient was told on {told}, and a clinician read the result only on {reviewed}. Check both dates.',
    reviewed: 'when it was reviewed',
  },
  find: ({ note, tables }) =>
    (note.procedures ?? []).flatMap(({ specimen = [] }) =>
      specimen.flatMap((one) => loopsOf(one, tables, note).flatMap((loop) => judge(loop, note) ?? [])),
    ),
};
