import type { Report } from '../../note/tree/finding.ts';
import { isAbsent } from '../absent.ts';
import type { Check } from '../check.ts';
import { rowsIn } from '../words.ts';
import { format } from '../sources.ts';

export const check: Check = {
  code: 'follow-up/infection-details',
  severity: 'information',
  title: 'An infection without its signs or its treatment',
  why: 'Whoever sees the patient next needs the signs, whether a culture was taken, and which treatment was begun.',
  sources: [format],
  messages: {
    signs: 'What was seen is not recorded. Write `signs`: redness and how far, warmth, pus, fever.',
    action: 'What was done is not recorded. Write `action`: culture, opening, treatment and for how long.',
    both: 'Neither signs nor action are recorded. Write `signs` (redness and how far, pus, fever) and `action` (culture, treatment).',
  },
  find(subject) {
    const found: Report[] = [];
    for (const event of subject.note.events ?? []) {
      if (
        event.kind?.value === undefined ||
        !rowsIn(subject.tables.events, event.kind).some(({ name }) => name === 'infection')
      )
        continue;
      const signs = isAbsent(subject, event, 'signs');
      const action = isAbsent(subject, event, 'action');
      if (signs || action)
        found.push({ at: event.kind, form: signs && action ? 'both' : signs ? 'signs' : 'action' });
    }
    return found;
  },
};
