import type { Report } from '../../note/tree/finding.ts';
import { nearest } from '../../note/text/nearest.ts';
import type { Check } from '../check.ts';
import { allAccepted } from '../acceptance.ts';
import { format } from '../sources.ts';

/** The code that a text probably means: its second half, or nearly the same letters. */
const meant = (text: string, codes: readonly string[]): string | undefined =>
  codes.find((code) => code.endsWith(`/${text}`)) ?? nearest(text, codes)?.word;

export const check: Check = {
  code: 'record/accepted-unknown-check',
  severity: 'warning',
  title: 'An accepted check that does not exist',
  why: 'A misspelled code accepts nothing, and the finding that was meant stays open.',
  sources: [format],
  messages: {
    main: 'There is no check {check}, so nothing is accepted here. Copy the code from the finding that is meant.',
    nearest: 'There is no check {check}, so nothing is accepted here. Did you mean {nearest}?',
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
};
