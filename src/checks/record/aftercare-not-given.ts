import { isAbsent } from '../absent.ts';
import type { Check } from '../check.ts';
import { format } from '../sources.ts';

const nothingGiven = /^(?:none|no|not given|nothing)\b/i;

/** Aftercare that is there, and does not say how, or says that none was given. */
export const check: Check = {
  code: 'record/aftercare-not-given',
  misses: ({ form }) => (form === 'main' ? 'given' : undefined),
  severity: 'information',
  title: 'Aftercare without how it was given',
  why: 'Instructions that nobody gave cannot be followed, and a patient who reads another language was not instructed by a page in this one.',
  sources: [{ source: 'aftercare-leaflets', mark: 'Q' }, format],
  messages: {
    main: 'The note does not say how the instructions were given. Write `given`: spoken, printed, email.',
    nothing: 'The note says that no instructions were given. Give them, or accept this with the reason.',
  },
  find(subject) {
    const { aftercare } = subject.note;
    if (aftercare === undefined) return [];
    const nothing = aftercare.given?.find(({ value }) => nothingGiven.test(value ?? ''));
    if (nothing !== undefined) return [{ at: nothing, form: 'nothing' }];
    return isAbsent(subject, aftercare, 'given') ? [{ at: aftercare.head }] : [];
  },
};
