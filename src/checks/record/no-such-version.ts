import type { Check } from '../check.ts';
import { format } from '../sources.ts';

export const check: Check = {
  code: 'record/no-such-version',
  severity: 'warning',
  title: 'A version of the note format that does not exist',
  why: 'The version says how the note is to be read. The first is 1.',
  sources: [format],
  messages: {
    main: 'There is no version {version} of the note format. Write `wheal: 1`.',
  },
  find({ note: { wheal } }) {
    if (wheal?.value === undefined || wheal.value >= 1) return [];
    return [{ at: wheal, args: { version: wheal.text } }];
  },
  fix: (_, { start, end }) => [
    { title: 'Write 1', kind: 'spelling', sure: false, edits: [{ start, end, text: '1' }] },
  ],
};
