import { isAbsent } from '../absent.ts';
import type { Check } from '../check.ts';
import { format } from '../sources.ts';

/** An age is not an identifier: laboratories want two on the container, the same as on the request. */
export const check: Check = {
  code: 'record/one-identifier',
  misses: () => 'born',
  severity: 'information',
  title: 'A specimen, and only one identifier of its patient',
  why: 'Laboratories refuse a container without two identifiers of the patient, the same as on the request. An age is not an identifier.',
  sources: [{ source: 'label-manuals', mark: 'Q' }, format],
  messages: {
    main: 'The chart number is the only identifier here, and the laboratory wants two. Write `born`, or `initials`.',
  },
  find(subject) {
    const { patient, procedures = [] } = subject.note;
    // Without an age too, the date of birth is asked for as that.
    if (patient?.keys.has('age') !== true) return [];
    if (!procedures.some(({ specimen = [] }) => specimen.some(({ keys }) => !keys.has('not-sent'))))
      return [];
    return isAbsent(subject, patient, 'born', 'dob', 'date-of-birth', 'initials')
      ? [{ at: patient.head }]
      : [];
  },
};
