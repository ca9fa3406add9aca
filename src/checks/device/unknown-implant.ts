import type { Report } from '../../note/tree/finding.ts';
import type { Check } from '../check.ts';
import { currentsOf } from '../current.ts';
import { isUnknown } from './_electrosurgery.ts';
import { format } from '../sources.ts';

export const check: Check = {
  code: 'device/unknown-implant',
  severity: 'warning',
  title: 'Current used with an implant that is not known here',
  why: 'An electronic device can be disturbed by current. What is not known here cannot be judged.',
  sources: [format],
  messages: {
    main: '`{implant}` is not a known implant, and `{word}` counts as electrosurgical current. Find out whether it is an electronic device; if it has a common name, write that.',
    current: 'counts as electrosurgical current',
  },
  find(subject) {
    const found: Report[] = [];
    const unknown = (subject.note.patient?.implants ?? []).flatMap((implant) =>
      implant.kind !== undefined && isUnknown(implant, subject) ? [implant.kind] : [],
    );
    if (unknown.length === 0) return found;
    for (const { energy } of currentsOf(subject)) {
      const { start, end, text } = energy.leaf;
      const related = [{ start, end, form: 'current', args: {} }];
      for (const leaf of unknown) found.push({ at: leaf, args: { implant: leaf.text, word: text }, related });
      return found;
    }
    return found;
  },
};
