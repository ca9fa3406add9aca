import type { Check } from '../check.ts';
import { format } from '../sources.ts';

export const check: Check = {
  code: 'record/draft',
  severity: 'warning',
  title: 'A draft that nobody has confirmed',
  why: 'A draft was made from a text by rules. Somebody who was there has to read it, value by value, before it is a record.',
  sources: [format],
  messages: {
    main: 'This note is a draft made from a text. Compare each value with what was done, and then write `draft: no`; a draft cannot be signed.',
  },
  find({ note: { draft } }) {
    return draft === undefined || draft.value === false ? [] : [{ at: draft }];
  },
};
