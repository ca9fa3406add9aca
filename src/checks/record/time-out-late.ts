import type { Check } from '../check.ts';
import { minutesOf, injectionBefore } from './_time-out.ts';

export const check: Check = {
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
    const minutes = minutesOf(note.timeOut);
    if (note.timeOut === undefined || minutes === undefined) return [];
    const first = injectionBefore(note, minutes);
    if (first === undefined) return [];
    const { start, end } = first;
    const args = { timeOut: note.timeOut.text, injection: first.text };
    return [{ at: note.timeOut, args, related: [{ start, end, form: 'injection', args: {} }] }];
  },
};
