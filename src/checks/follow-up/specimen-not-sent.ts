import type { Check } from '../check.ts';
import { lateOf, lateReport } from './_plan.ts';
import { loop } from './_results.ts';

export const check: Check = {
  code: 'follow-up/specimen-not-sent',
  severity: 'warning',
  title: 'A specimen with no record that it was sent',
  why: 'A container that stays in the room has no result, and nobody waits for one.',
  sources: [loop, { source: 'insurer-tips', mark: 'Q' }],
  messages: {
    main: 'The note does not say that {name} was sent, and it should have left by {to}. Look for the container, call the laboratory, and write `sent`.',
  },
  find: (subject) => lateOf(subject, 'specimen to send').map((late) => lateReport(late)),
};
