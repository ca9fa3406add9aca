import type { Check } from '../check.ts';
import { tellsOf } from '../mishaps.ts';
import { format } from '../sources.ts';

export const check: Check = {
  code: 'record/mishap',
  severity: 'warning',
  title: 'Something went wrong, and no record of what was done',
  why: 'A wrong site, a needlestick, a missing consent, a vial out of date or an injury has steps that follow, and the record should show them. Once the note says what was done, nothing is reported.',
  sources: [
    { source: 'wrong-site-review', mark: 'Q' },
    { source: 'sharps-dermatology-2016', mark: 'Q' },
    format,
  ],
  messages: {
    main: '`{word}`: write what was done.',
    site: '`{word}`: a biopsy at the wrong site. Tell the clinician and the patient, plan the right one, and write all of it.',
    sharps:
      '`{word}`: a sharps injury or contact with blood. Wash, report it at once for evaluation after exposure, and write that it was reported.',
    consent:
      '`{word}`: the procedure is recorded without consent. Tell the clinician, talk with the patient, and write what was said.',
    expired:
      '`{word}`: something was used after its expiration date. Tell the clinician, set the rest aside, and write what was done.',
    recalled:
      '`{word}`: something that its manufacturer has recalled. Look up which patients had it, tell the clinician, and write what was done.',
    injury:
      '`{word}`: an injury or a collapse. Write who examined the patient, what was found and how it ended.',
  },
  find: tellsOf(['site', 'sharps', 'consent', 'expired', 'recalled', 'injury']),
};
