import { isAbsent } from '../absent.ts';
import type { Check, Report } from '../check.ts';
import { bounded } from '../bounded.ts';
import { isAnyLate, lateOf, lateReport } from './_plan.ts';

const format = { source: 'format', mark: 'format' } as const;

export const checks: readonly Check[] = [
  {
    code: 'follow-up/sutures-overdue',
    when: isAnyLate,
    severity: 'warning',
    title: 'Stitches that should be out',
    why: 'Stitches that stay in leave tracks and may fester; on the face tracks are likelier from the seventh day on.',
    sources: [
      { source: 'punch-leaflet', mark: 'Q' },
      { source: 'suture-handbook', mark: 'Q' },
      { source: 'closure-removal-text', mark: 'Q' },
      format,
    ],
    messages: {
      main: 'The stitches were to come out from {from} to {to}, and nothing says that they did. Call the patient, or write `sutures-out` with day, name and number.',
    },
    find: (subject) =>
      lateOf(subject, 'suture removal').map((late) =>
        lateReport(late, {
          severity: bounded('warning', late.item.mark),
          args: { from: late.item.from },
        }),
      ),
  },
  {
    code: 'follow-up/event-without-outcome',
    about: ['events'],
    when: isAnyLate,
    severity: 'warning',
    title: 'Bleeding, an infection or another event without its end',
    why: 'What was reported and not followed up is where a small complication becomes a large one.',
    sources: [format],
    messages: {
      main: 'The note does not say how this ended: {what}. Ask the patient, and write `outcome`; or add the next event with its outcome.',
    },
    find: (subject) => lateOf(subject, 'event outcome').map((late) => lateReport(late)),
  },
  {
    code: 'follow-up/infection-details',
    about: ['events'],
    severity: 'information',
    title: 'An infection without what was seen or what was done',
    why: 'Whoever sees the patient next needs the signs, whether a culture was taken, and which treatment was begun.',
    sources: [format],
    messages: {
      signs: 'What was seen is not recorded. Write `signs`: redness and how far, warmth, pus, fever.',
      action: 'What was done is not recorded. Write `action`: culture, opening, treatment and for how long.',
      both: 'Neither signs nor action are recorded. Write `signs` (redness and how far, pus, fever) and `action` (culture, treatment).',
    },
    find(subject) {
      const found: Report[] = [];
      for (const event of subject.note.events ?? []) {
        if (
          event.kind?.value === undefined ||
          subject.tables.events.find(event.kind.value)?.name !== 'infection'
        )
          continue;
        const signs = isAbsent(subject, event, 'signs');
        const action = isAbsent(subject, event, 'action');
        if (signs || action)
          found.push({ at: event.kind, form: signs && action ? 'both' : signs ? 'signs' : 'action' });
      }
      return found;
    },
  },
];
