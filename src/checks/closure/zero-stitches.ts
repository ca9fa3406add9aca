import type { Check } from '../check.ts';
import { rowsIn } from '../words.ts';
import { format } from '../sources.ts';

export const check: Check = {
  code: 'closure/zero-stitches',
  severity: 'warning',
  title: 'A suture with no stitches',
  why: 'Whoever removes the stitches compares with this number.',
  sources: [format],
  messages: {
    main: 'The closure names a suture and no stitches. Write how many were placed, or `closure: none` if the wound was left open.',
  },
  alternatives: { readAs: [] },
  find: ({ note, tables }) =>
    (note.procedures ?? []).flatMap(({ closure = [] }) =>
      closure.flatMap(({ count, how }) =>
        count?.value === 0 && rowsIn(tables.closures, how).every(({ stitched }) => stitched)
          ? [{ at: count }]
          : [],
      ),
    ),
};
