import type { Check } from '../check.ts';
import type { Mishap } from '../mishaps.ts';
import type { Subject } from '../check.ts';
import { allergyNames } from '../lookups.ts';
import { tellsOf } from '../mishaps.ts';
import { patientTexts } from '../patient-texts.ts';
import { format } from '../sources.ts';

/** Whether no text names what it may have come from, which another check reports. */
const namesNothing = (subject: Subject, { at }: Mishap): boolean =>
  !patientTexts(subject)
    .told(allergyNames(subject.tables))
    .some(
      ({ leaf, row }) => leaf.start <= at.start && at.end <= leaf.end && row.name !== 'local anesthetics',
    );

export const check: Check = {
  code: 'allergy/reaction-told',
  severity: 'warning',
  title: 'Signs of an allergic reaction, and nothing said of what was done',
  why: 'Hives, swelling away from the wound or trouble breathing at the visit may be an allergy that is in no list yet. Silent once the note says what was given or who looked at it; where a substance is named, the check of allergies outside of the list reports it.',
  sources: [{ source: 'us-label-amide-contraindication', mark: 'Q' }, format],
  messages: {
    main: '`{word}`: a sign of an allergic reaction.',
    reaction:
      '`{word}` can be an allergic reaction. Write what was done and how it ended, and what the patient had met; once it is known to what, write it under `allergies` too.',
  },
  find: tellsOf(['reaction'], namesNothing),
};
