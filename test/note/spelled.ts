import type { Problem } from '../../src/note/tree/finding.ts';
import type { Reading, Respelling } from '../../src/note/values/reading.ts';

/** The problems of a reading in a short form: `quantity/trailing-zero [1.0] -> 1`, with `!` where the fix is sure. */
export function problemsOf(text: string, { problems }: Reading<unknown>): readonly string[] {
  return problems.map((problem) => {
    const code = problem.form === undefined ? problem.code : `${problem.code}/${problem.form}`;
    return `${code} [${text.slice(problem.at.start, problem.at.end)}]${fixOf(problem)}`;
  });
}

function fixOf({ data }: Problem): string {
  if (data === undefined) return '';
  const { instead, sure } = data as Respelling;
  return ` -> ${instead.join(' | ')}${sure ? '!' : ''}`;
}
