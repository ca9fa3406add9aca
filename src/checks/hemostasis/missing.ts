import type { Check } from '../check.ts';
import { isAbsent } from '../absent.ts';
import { rowsIn } from '../words.ts';
import { format } from '../sources.ts';

export const check: Check = {
  code: 'hemostasis/missing',
  misses: () => 'hemostasis',
  severity: 'warning',
  title: 'No record of how bleeding was stopped',
  why: 'Whoever is called at night about bleeding needs to know what was done, and an allergy or a device can only be checked against what is written.',
  sources: [format],
  messages: {
    main: 'The note does not say how bleeding was stopped. Write `hemostasis`: pressure, aluminum chloride, heat cautery, suture, or `none`.',
  },
  find: (subject) =>
    (subject.note.procedures ?? []).flatMap((procedure) => {
      const [row] = rowsIn(subject.tables.methods, procedure.method);
      const bleeds = row?.takesTissue !== false && row?.wound !== false;
      const asked = bleeds && isAbsent(subject, procedure, 'hemostasis', 'haemostasis');
      return asked ? [{ at: procedure.head }] : [];
    }),
};
