import type { Accepted, Note } from '../../note/generated/types.ts';
import { nearest } from '../../note/text/nearest.ts';
import { acceptingParts } from '../acceptance.ts';
import type { Check, Report } from '../check.ts';

const allAccepted = (note: Note): readonly Accepted[] =>
  acceptingParts(note).flatMap(({ accepted = [] }) => accepted);

/** What an acceptance leaves out. `??` and an empty value have findings of their own. */
function unexplained({ check, reason, head, keys }: Accepted): readonly Report[] {
  const args = { check: check?.text ?? 'a finding' };
  if (!keys.has('reason')) return [{ at: head, args }];
  if (reason?.value === undefined || keys.has('by')) return [];
  return [{ at: head, form: 'nobody', severity: 'information', args }];
}

/** The code that a text probably means: its second half, or nearly the same letters. */
const meant = (text: string, codes: readonly string[]): string | undefined =>
  codes.find((code) => code.endsWith(`/${text}`)) ?? nearest(text, codes)?.word;

export const checks: readonly Check[] = [
  {
    code: 'record/accepted-without-reason',
    about: ['accepted'],
    misses: ({ form }) => (form === 'main' ? 'reason' : 'by'),
    severity: 'warning',
    title: 'A finding accepted without a reason',
    why: 'Accepting a finding says that the clinician has weighed it. Without the reason nobody can follow that later, so it does not count.',
    sources: [{ source: 'format', mark: 'format' }],
    messages: {
      main: '{check} is accepted without a reason, so it does not count. Write `reason`.',
      nobody: '{check} is accepted, but the note does not say by whom. Write `by`.',
    },
    find: ({ note }) => allAccepted(note).flatMap(unexplained),
  },
  {
    code: 'record/accepted-unknown-check',
    about: ['accepted'],
    severity: 'warning',
    title: 'An accepted check that does not exist',
    why: 'A misspelt code accepts nothing, and the finding that was meant stays open.',
    sources: [{ source: 'format', mark: 'format' }],
    messages: {
      main: 'There is no check {check}, so nothing is accepted here. Copy the code from the finding that is meant.',
      nearest: 'There is no check {check}, so nothing is accepted here. Is {nearest} meant?',
    },
    find(subject) {
      const found: Report[] = [];
      const { note } = subject;
      for (const { check } of allAccepted(note)) {
        const text = check?.value?.trim();
        if (check === undefined || text === undefined || subject.codes.includes(text)) continue;
        const near = meant(text, subject.codes);
        found.push(
          near === undefined
            ? { at: check, args: { check: text } }
            : { at: check, form: 'nearest', args: { check: text, nearest: near } },
        );
      }
      return found;
    },
    fix(_, { form, args, start, end }) {
      if (form !== 'nearest') return [];
      const text = String(args['nearest']);
      return [{ title: `Write ${text}`, kind: 'spelling', sure: false, edits: [{ start, end, text }] }];
    },
  },
];
