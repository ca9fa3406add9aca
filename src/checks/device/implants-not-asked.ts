import type { Report } from '../../note/tree/finding.ts';
import { isAbsent } from '../absent.ts';
import type { Check } from '../check.ts';
import { currentsOf } from '../current.ts';
import { rowsIn } from '../words.ts';
import { format } from '../sources.ts';

export const check: Check = {
  code: 'device/implants-not-asked',
  misses: ({ form }) => (form === 'main' ? 'implants' : undefined),
  severity: 'warning',
  title: 'Current used, and nobody asked about implants',
  why: 'A patient may not mention a pacemaker or a stimulator unless asked. A key that is absent says that nobody asked.',
  sources: [{ source: 'device-advice-2013', mark: 'Q' }, format],
  messages: {
    main: '`{word}` counts as electrosurgical current, and the note does not say whether the patient has an implanted device. Ask, and write `implants`: none, or what and where.',
    unknown:
      '`{word}` counts as electrosurgical current, and it is not known whether the patient has an implanted device. Find out, or use heat cautery.',
    implants: 'what the note says about implants',
  },
  find(subject) {
    const found: Report[] = [];
    const { note, tables } = subject;
    const { patient } = note;
    const implants = patient?.implants;
    const unknown = implants?.find(({ kind }) => rowsIn(tables.implants, kind)[0]?.concern === 'unknown');
    if (unknown === undefined && patient !== undefined && !isAbsent(subject, patient, 'implants'))
      return found;
    for (const { energy } of currentsOf(subject)) {
      const related =
        unknown === undefined ? [] : [{ start: unknown.start, end: unknown.end, form: 'implants', args: {} }];
      const form = unknown === undefined ? 'main' : 'unknown';
      found.push({ at: energy.leaf, form, args: { word: energy.leaf.text }, related });
      return found;
    }
    return found;
  },
};
