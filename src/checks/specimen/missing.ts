import type { Check } from '../check.ts';
import { isAbsent } from '../absent.ts';
import { rowsIn } from '../words.ts';
import { format } from '../sources.ts';

export const check: Check = {
  code: 'specimen/missing',
  misses: () => 'specimen',
  severity: 'warning',
  title: 'Tissue taken, and no specimen recorded',
  why: 'Specimens that nobody recorded are the ones that are lost. Tissue that is not sent deserves its reason.',
  sources: [{ source: 'insurer-tips', mark: 'Q' }, format],
  messages: {
    main: 'Tissue was taken ({method}), and no specimen is recorded. Write `specimen` with label, medium and tests; or `not sent` and why.',
  },
  find: (subject) =>
    (subject.note.procedures ?? []).flatMap((procedure) => {
      const [row] = rowsIn(subject.tables.methods, procedure.method);
      if (row?.takesTissue !== true || !isAbsent(subject, procedure, 'specimen', 'specimens')) return [];
      return [{ at: procedure.head, args: { method: row.name } }];
    }),
};
