import type { Subject } from './check.ts';

/** What several checks ask of a note, worked out for the first of them. */
export const shared =
  <Value extends object>(work: (subject: Subject) => Value): ((subject: Subject) => Value) =>
  (subject) => {
    let value = subject.answers.get(work) as Value | undefined;
    if (value === undefined) subject.answers.set(work, (value = work(subject)));
    return value;
  };
