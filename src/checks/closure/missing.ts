import type { Check } from '../check.ts';
import { isAbsent } from '../absent.ts';
import { rowsIn } from '../words.ts';
import { format } from '../sources.ts';

export const check: Check = {
  code: 'closure/missing',
  misses: ({ form }) => (form === 'main' ? 'closure' : undefined),
  severity: 'warning',
  title: 'A punch or an excision without a closure',
  why: 'Stitches that nobody recorded stay in. A punch may be left open, but the note should say so.',
  sources: [{ source: 'punch-closure-2005', mark: 'Q' }, format],
  messages: {
    main: 'The note does not say how the wound was closed ({method}). Write `closure`: the suture, second intention, or `none`.',
    dated:
      'Stitches have a removal date here, and the note does not say how the wound was closed ({method}). Write `closure`, or remove the date if there are no stitches.',
  },
  find: (subject) =>
    (subject.note.procedures ?? []).flatMap((procedure) => {
      const [row] = rowsIn(subject.tables.methods, procedure.method);
      if (row?.wantsClosure !== true || !isAbsent(subject, procedure, 'closure')) return [];
      const args = { method: row.name };
      const { suturesDue: dated, head } = procedure;
      return [dated?.value === undefined ? { at: head, args } : { at: dated, form: 'dated', args }];
    }),
};
