import type { Check } from '../check.ts';
import { isAbsent } from '../absent.ts';
import { format } from '../sources.ts';

export const check: Check = {
  code: 'follow-up/faint-without-action',
  misses: () => 'action',
  severity: 'information',
  title: 'Fainting, and no record of what was done',
  why: 'Whether the patient was laid down, hurt by the fall or given anything is asked about at the next procedure.',
  sources: [format],
  messages: {
    main: 'What was done is not recorded. Write `action`: laid flat, legs raised, pulse and blood pressure, whether anything was hurt.',
  },
  find: (subject) =>
    (subject.note.events ?? []).flatMap((event) => {
      const { kind } = event;
      if (kind?.value === undefined || subject.tables.events.find(kind.value)?.name !== 'faint') return [];
      return isAbsent(subject, event, 'action') ? [{ at: kind }] : [];
    }),
};
