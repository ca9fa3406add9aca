import type { Draft, Span } from '../../src/draft/draft.ts';

/** The words of a text of which a draft says nothing: neither placed, nor in conflict, nor passed over, nor unplaced. */
export function unaccounted(text: string, made: Draft): readonly string[] {
  const told = new Uint8Array(text.length);
  const spans: readonly Span[] = [
    ...made.placed,
    ...made.passed,
    ...made.unplaced,
    ...made.conflicts.flatMap(({ words }) => words),
  ];
  for (const { from, to } of spans) told.fill(1, from, to);
  return [...text.matchAll(/[\p{L}\d]+/gu)].flatMap(({ 0: word, index }) =>
    told[index] === 1 ? [] : [word],
  );
}
