import type { Check } from '../check.ts';
import { tellsOf } from '../mishaps.ts';
import { format } from '../sources.ts';

export const check: Check = {
  code: 'record/mishap',
  severity: 'warning',
  title: 'Something went wrong, and nothing is said of what was done',
  why: 'A wrong site, a needlestick, a missing consent, a vial out of date or an injury has steps that follow, and the record should show them. Once the note says what was done, nothing is reported.',
  sources: [
    { source: 'wrong-site-review', mark: 'Q' },
    { source: 'sharps-dermatology-2016', mark: 'Q' },
    format,
  ],
  messages: {
    main: '`{word}`: write what was done.',
    site: '`{word}` tells of a biopsy at the wrong place. Tell the clinician and the patient, plan the right one, and write all of it.',
    sharps:
      '`{word}` tells of an injury by a sharp or contact with blood. Wash, report it at once for the assessment after exposure, and write that it was reported.',
    consent:
      '`{word}`: the procedure is recorded without consent. Tell the clinician, talk with the patient, and write what was said.',
    expired:
      '`{word}` tells of something used after its date. Tell the clinician, put the rest out of use, and write what was done.',
    recalled:
      '`{word}` tells of something that its maker has recalled. Look up which patients had it, tell the clinician, and write what was done.',
    injury:
      '`{word}` tells of an injury or a collapse. Write who examined the patient, what was found and how it ended.',
  },
  find: tellsOf(['site', 'sharps', 'consent', 'expired', 'recalled', 'injury']),
};
