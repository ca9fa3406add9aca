import type { Report } from '../../note/tree/finding.ts';
import { isAbsent } from '../absent.ts';
import type { Check } from '../check.ts';
import { sentSpecimens } from './_sent.ts';
import { format } from '../sources.ts';

export const check: Check = {
  code: 'specimen/medium-missing',
  misses: () => 'medium',
  severity: 'warning',
  title: 'No record of what the specimen is in',
  why: 'The medium decides which tests are possible, and a mistake can only be fixed while the tissue is fresh.',
  sources: [{ source: 'histology-manuals', mark: 'Q' }, format],
  messages: {
    main: 'The note does not say what the specimen is in. Look at the container, and write `medium`: formalin, Michel, saline, sterile container.',
  },
  find(subject) {
    const found: Report[] = [];
    for (const { specimen } of sentSpecimens(subject))
      if (isAbsent(subject, specimen, 'medium')) found.push({ at: specimen.head });
    return found;
  },
};
