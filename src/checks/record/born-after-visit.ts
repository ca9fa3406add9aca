import type { Check } from '../check.ts';
import { format } from '../sources.ts';

export const check: Check = {
  code: 'record/born-after-visit',
  severity: 'error',
  title: 'Born after the visit',
  why: 'Nobody is treated before birth: the date of birth or that of the visit is wrong, and the age decides which dose limits apply.',
  sources: [format],
  messages: {
    main: 'The date of birth {born} is later than the visit on {visit}. Check both dates against the chart.',
  },
  alternatives: { readAs: ['other-date'] },
  find({ note }) {
    const born = note.patient?.born;
    const visit = note.visit?.value?.date;
    if (born?.value === undefined || visit === undefined || born.value <= visit) return [];
    return [{ at: born, args: { born: born.value, visit } }];
  },
};
