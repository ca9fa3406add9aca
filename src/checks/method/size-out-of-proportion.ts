import type { Check } from '../check.ts';
import { disproportionOf } from './_proportion.ts';
import { format } from '../sources.ts';

export const check: Check = {
  code: 'method/size-out-of-proportion',
  severity: 'warning',
  title: 'A size out of all proportion to the method',
  why: 'A sample more than five times as large as the method usually takes is more likely a slip: cm for mm, or a missing decimal point. A lesion that is described as nearly as large explains it.',
  sources: [format],
  messages: {
    main: '{size} is more than five times what a {method} usually takes (up to {usual} mm). Check number and unit; if it is right, write the size under `lesion` too.',
  },
  alternatives: { readAs: ['tenth'] },
  find: ({ note, tables }) =>
    (note.procedures ?? []).flatMap((procedure) => {
      const { size } = procedure;
      const found = disproportionOf(procedure, tables);
      if (size === undefined || found === undefined) return [];
      return [{ at: size, args: { size: size.text, method: found.method, usual: found.usual } }];
    }),
};
