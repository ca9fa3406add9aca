import type { Report } from '../../note/tree/finding.ts';
import { isAbsent } from '../absent.ts';
import type { Check } from '../check.ts';
import { sentSpecimens } from './_sent.ts';
import { format } from '../sources.ts';

export const check: Check = {
  code: 'specimen/label-missing',
  misses: () => 'label',
  severity: 'warning',
  title: 'A specimen without a label in the note',
  why: 'With several containers only the label tells which result belongs to which site. With a single specimen it is information.',
  sources: [{ source: 'label-manuals', mark: 'Q' }, format],
  messages: {
    main: 'This visit has {count} specimens, and this one has no label in the note. Read it off the container, and write `label`.',
    only: 'The specimen has no label in the note. Write what is on the container: `label: A`.',
  },
  find(subject) {
    const found: Report[] = [];
    const specimens = sentSpecimens(subject);
    const several = specimens.length > 1;
    for (const { specimen } of specimens) {
      if (!isAbsent(subject, specimen, 'label')) continue;
      found.push(
        several
          ? { at: specimen.head, args: { count: specimens.length } }
          : { at: specimen.head, form: 'only', severity: 'information' },
      );
    }
    return found;
  },
};
