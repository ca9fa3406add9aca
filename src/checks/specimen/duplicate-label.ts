import type { Report } from '../../note/tree/finding.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import { plainWord } from '../../note/words/word-table.ts';
import type { Check } from '../check.ts';
import { sentSpecimens } from './_sent.ts';

export const check: Check = {
  code: 'specimen/duplicate-label',
  severity: 'error',
  title: 'Two specimens of one visit with the same label',
  why: 'Two containers with one label cannot be told apart: a result may be read for the wrong site.',
  sources: [
    { source: 'label-manuals', mark: 'Q' },
    { source: 'laboratory-rejection', mark: 'Q' },
  ],
  messages: {
    main: 'Label {label} is already used in this visit. Look at both containers, and tell the laboratory if they were sent like this.',
    first: 'label {label} is used here first',
  },
  alternatives: { readAs: [] },
  find(subject) {
    const found: Report[] = [];
    const used = new Map<string, Leaf<string>>();
    for (const { specimen } of sentSpecimens(subject)) {
      const { label } = specimen;
      if (label?.value === undefined) continue;
      const key = plainWord(label.value);
      const first = used.get(key);
      if (first === undefined) used.set(key, label);
      else {
        const args = { label: label.text };
        found.push({
          at: label,
          args,
          related: [{ start: first.start, end: first.end, form: 'first', args }],
        });
      }
    }
    return found;
  },
};
