import type { Check } from '../check.ts';
import { isDone } from '../../note/for-all.ts';
import { rowsIn } from '../words.ts';
import { format } from '../sources.ts';

/** Words that say who was asked, and not what was answered: "declined by the patient". */
const who: ReadonlySet<string> = new Set(['obtained', 'guardian', 'assent']);

export const check: Check = {
  code: 'record/consent-declined',
  severity: 'error',
  title: 'Consent declined, and yet a procedure is recorded',
  why: 'Either the consent is recorded wrong, or something was done to a patient who had said no.',
  sources: [format, { source: 'time-out-elements', mark: 'Q' }],
  messages: {
    main: 'Consent is recorded as declined, but a procedure is recorded too. If the patient agreed after all, say how; otherwise check which of the two is wrong.',
    procedure: 'recorded here',
  },
  find({ note, tables }) {
    const { consent, procedures = [] } = note;
    const rows = rowsIn(tables.consents, consent);
    if (consent === undefined || rows.length === 0) return [];
    const isDeclined = rows.some(({ name }) => name === 'declined');
    if (!isDeclined || !rows.every(({ name }) => name === 'declined' || who.has(name))) return [];
    const related = procedures
      .filter(isDone)
      .map(({ head }) => ({ start: head.start, end: head.end, form: 'procedure', args: {} }));
    return related.length === 0 ? [] : [{ at: consent, related }];
  },
};
