import type { Finding, Fix } from '../../note/tree/finding.ts';
import type { Respelling } from '../../note/values/reading.ts';
import type { Check, FixPlace } from '../check.ts';
import { wordFix } from '../word-fix.ts';

/** Fixes that write what a remark says could be instead, with the smallest edit. */
export const respell: NonNullable<Check['fix']> = ({ text }, finding) => {
  const { typed, instead, sure, adds } = (finding.data ?? noRespelling) as Respelling;
  const start = startOf(typed, text, finding);
  if (start === undefined) return [];
  return instead.map((words) =>
    wordFix(words, { sure, other: adds === true }, [smallestEdit(typed, words, start)]),
  );
};

const noRespelling: Respelling = { typed: '', instead: [], sure: false };

/** Where the typed words are: at the finding, or just within its quotes; undefined where they are escaped or folded. */
function startOf(typed: string, text: FixPlace['text'], { start, end }: Finding): number | undefined {
  if (text.slice(start, end) === typed) return start;
  return text.slice(start + 1, end - 1) === typed ? start + 1 : undefined;
}

function smallestEdit(before: string, after: string, start: number): Fix['edits'][number] {
  const shorter = Math.min(before.length, after.length);
  let head = 0;
  while (head < shorter && before[head] === after[head]) head++;
  let tail = 0;
  while (tail < shorter - head && before.at(-1 - tail) === after.at(-1 - tail)) tail++;
  return {
    start: start + head,
    end: start + before.length - tail,
    text: after.slice(head, after.length - tail),
  };
}
