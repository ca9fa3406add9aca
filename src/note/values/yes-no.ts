import { notUnderstood } from './quantity.ts';
import { longestRead, noProblems, part, problemAt, trimmed, unread, type Reading } from './reading.ts';

const answers: ReadonlyMap<string, boolean> = new Map([
  ...['yes', 'y', 'true', 'done', 'taken', 'obtained', 'in chart', 'on file', 'attached'].map(
    (word): [string, boolean] => [word, true],
  ),
  ...['no', 'n', 'false', 'none', 'not done', 'not taken', 'declined', 'refused'].map(
    (word): [string, boolean] => [word, false],
  ),
]);

/** Reads yes or no. */
export function readYesNo(text: string): Reading<boolean> {
  const usual = answers.get(text);
  if (usual !== undefined) return { value: usual, problems: noProblems };
  const typed = trimmed(text);
  const value = typed.typed.length > longestRead ? undefined : answers.get(typed.typed.toLowerCase());
  if (value !== undefined) return { value, problems: noProblems };
  const after = /^(yes|no)\b[\s,;:.]*/i.exec(typed.typed);
  return after
    ? unread(notUnderstood(part(typed, after[0].length), typed))
    : unread(problemAt(typed, 'quantity/unreadable', { form: 'yesno' }));
}
