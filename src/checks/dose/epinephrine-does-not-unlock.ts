import type { Check } from '../check.ts';
import { sourcesDiffer, doesNotUnlock } from './_epinephrine.ts';

export const check: Check = {
  code: 'dose/epinephrine-does-not-unlock',
  severity: 'information',
  title: 'Epinephrine that does not allow the higher limit',
  why: 'The higher limits were published with epinephrine 1:200,000 and stronger, and a buffered solution loses epinephrine over time.',
  sources: [
    { source: 'epinephrine-strengths', mark: 'Q' },
    { source: 'buffered-stability', mark: 'Q' },
  ],
  messages: {
    weak: 'Epinephrine {drawn} is weaker than {weakest}, so the limit of plain {agent} counts here.',
    stale:
      'This was buffered more than {days} days before, and its epinephrine is gone by then, so the limit of plain {agent} counts here.',
  },
  sourcesDiffer,
  find: doesNotUnlock,
};
