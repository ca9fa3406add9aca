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
  title: 'Signs of an allergic reaction, and no record of what was done',
  why: 'Hives, swelling away from the wound or trouble breathing at the visit may be an allergy that is not listed yet. Nothing is reported once the note says what was given or who examined the patient; where a substance is named, the check of allergies outside the list reports it.',
  sources: [{ source: 'us-label-amide-contraindication', mark: 'Q' }, format],
  messages: {
    main: '`{word}`: a sign of an allergic reaction.',
    reaction:
      '`{word}` can be an allergic reaction. Write what was done, how it ended and what the patient was exposed to; once the cause is known, write it under `allergies` too.',
  },
  find: tellsOf(['reaction'], namesNothing),
};
