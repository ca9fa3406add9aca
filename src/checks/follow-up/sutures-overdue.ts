import type { Check } from '../check.ts';
import { bounded } from '../bounded.ts';
import { lateOf, lateReport } from './_plan.ts';
import { sourcesDiffer } from '../closure/_removal.ts';
import { format } from '../sources.ts';

export const check: Check = {
  code: 'follow-up/sutures-overdue',
  severity: 'warning',
  title: 'Stitches that should be out',
  why: 'Stitches that stay in leave tracks and may get infected; on the face tracks are likelier from the seventh day on.',
  sources: [
    { source: 'punch-leaflet', mark: 'Q' },
    { source: 'suture-handbook', mark: 'Q' },
    { source: 'closure-removal-text', mark: 'Q' },
    format,
  ],
  messages: {
    main: 'The stitches were due out from {from} to {to}{window}, and the note does not say that they were removed. Call the patient, or write `sutures-out` with day, name and number.',
  },
  sourcesDiffer,
  find: (subject) =>
    lateOf(subject, 'suture removal')
      // A later day that the note plans is reported where it is written, if at all.
      .filter(({ item, today }) => !item.fixed || item.proposed < today)
      .map((late) =>
        lateReport(late, {
          severity: bounded('warning', late.item.mark),
          args: {
            from: late.item.from,
            window: late.item.what === undefined ? '' : ` (${late.item.what})`,
          },
        }),
      ),
};
