import type { Leaf } from '../../note/leaf.ts';
import type { Injection, Note } from '../../note/generated/types.ts';
import type { Occasion } from '../../note/values.ts';
import type { Check } from '../check.ts';

type Clocked = Leaf<Occasion> & { readonly minutes: number };

function clocked(leaf: Leaf<Occasion> | undefined): Clocked | undefined {
  const minutes = leaf?.value?.minutes;
  return leaf === undefined || minutes === undefined ? undefined : { ...leaf, minutes };
}

/** A cream goes on long before the patient enters the room. */
const isCream = ({ keys }: Injection): boolean => keys.has('amount') || keys.has('on');

function firstInjection(note: Note): Clocked | undefined {
  let first: Clocked | undefined;
  const injections = [note, ...(note.procedures ?? [])].flatMap(({ anesthetic = [] }) => anesthetic);
  for (const injection of injections) {
    const time = isCream(injection) ? undefined : clocked(injection.time);
    if (time !== undefined && (first === undefined || time.minutes < first.minutes)) first = time;
  }
  return first;
}

export const checks: readonly Check[] = [
  {
    code: 'record/time-out-late',
    severity: 'warning',
    title: 'Time-out after the first injection',
    why: 'The time-out is there to stop the wrong site before the needle, not after it.',
    sources: [{ source: 'universal-protocol', mark: 'Q' }],
    messages: {
      main: 'The time-out is recorded at {timeOut}, after the first injection at {injection}. Check both clock times.',
      injection: 'the first injection',
    },
    find({ note }) {
      const timeOut = clocked(note.timeOut);
      if (timeOut === undefined) return [];
      const first = firstInjection(note);
      if (first === undefined || first.minutes >= timeOut.minutes) return [];
      const { start, end } = first;
      return [
        {
          at: timeOut,
          args: { timeOut: timeOut.text, injection: first.text },
          related: [{ start, end, form: 'injection', args: {} }],
        },
      ];
    },
  },
  {
    code: 'record/time-out-not-held',
    severity: 'warning',
    title: 'No time-out was held',
    why: 'The pause before the first cut, in which patient, site and procedure are said aloud, catches the wrong site and the wrong patient.',
    sources: [{ source: 'universal-protocol', mark: 'Q' }],
    messages: {
      main: 'The note says that no time-out was held. If there was a reason, accept this finding and say it.',
    },
    find: ({ note: { timeOut } }) => (timeOut?.value?.done === false ? [{ at: timeOut }] : []),
  },
];
