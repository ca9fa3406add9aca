import type { Check } from '../check.ts';

export const check: Check = {
  code: 'record/time-out-not-held',
  severity: 'warning',
  title: 'No time-out was held',
  why: 'The pause before the first cut, in which patient, site and procedure are said aloud, catches the wrong site and the wrong patient.',
  sources: [{ source: 'universal-protocol', mark: 'Q' }],
  messages: {
    main: 'The note says that no time-out was held. If there was a reason, accept this finding and give it.',
  },
  find: ({ note: { timeOut } }) => (timeOut?.value?.done === false ? [{ at: timeOut }] : []),
};
