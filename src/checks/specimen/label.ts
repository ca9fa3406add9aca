import type { Leaf } from '../../note/tree/leaf.ts';
import { plainWord } from '../../note/words/word-table.ts';
import { isAbsent } from '../absent.ts';
import { isSpecimenIncomplete } from '../complete.ts';
import type { Check, Report } from '../check.ts';
import { sentSpecimens } from './_sent.ts';

const lid = /\b(?:lid|cap|top)\b/i;
const notOn = /\b(?:not|container|jar|side|body)\b/i;

export const checks: readonly Check[] = [
  {
    code: 'specimen/label-missing',
    when: isSpecimenIncomplete,
    misses: () => 'label',
    severity: 'warning',
    title: 'A specimen without a label in the note',
    why: 'With several containers only the label tells which result belongs to which site. Of an only specimen it is information.',
    sources: [
      { source: 'label-manuals', mark: 'Q' },
      { source: 'format', mark: 'format' },
    ],
    messages: {
      main: 'This visit has {count} specimens, and this one has no label in the note. Read it off the container, and write `label`.',
      only: 'The specimen has no label in the note. Write what stands on the container: `label: A`.',
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
  },
  {
    code: 'specimen/duplicate-label',
    about: ['label'],
    severity: 'error',
    title: 'Two specimens of one visit with the same label',
    why: 'Two containers with one label can not be told apart: a result may be read for the wrong site.',
    sources: [
      { source: 'label-manuals', mark: 'Q' },
      { source: 'laboratory-rejection', mark: 'Q' },
    ],
    messages: {
      main: 'Label {label} is already used in this visit. Look at both containers, and tell the laboratory if they were sent like this.',
      first: 'label {label} is used here first',
    },
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
  },
  {
    code: 'specimen/label-on-lid',
    about: ['label-on'],
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
  },
];
