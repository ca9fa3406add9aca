import type { Report } from '../../note/tree/finding.ts';
import type { Check } from '../check.ts';
import { sentSpecimens } from './_sent.ts';

const lid = /\b(?:lid|cap|top)\b/i;

const notOn = /\b(?:not|container|jar|side|body)\b/i;

export const check: Check = {
  code: 'specimen/label-on-lid',
  severity: 'warning',
  title: 'The label is on the lid',
  why: 'Lids are taken off and laid side by side; a label on the lid no longer says what is in the container.',
  sources: [{ source: 'label-manuals', mark: 'Q' }],
  messages: { main: 'The label is on the lid, which can be exchanged. Put one on the container itself.' },
  find(subject) {
    const found: Report[] = [];
    for (const { specimen } of sentSpecimens(subject)) {
      const { labelOn } = specimen;
      if (labelOn?.value !== undefined && lid.test(labelOn.value) && !notOn.test(labelOn.value))
        found.push({ at: labelOn });
    }
    return found;
  },
};
