import type { TextEdit } from './finding.ts';

/**
 * The text after all edits. Their offsets are those of the text given; they may be in any order.
 * @throws RangeError where two edits overlap or one is outside of the text
 */
export function applyEdits(text: string, edits: readonly TextEdit[]): string {
  const ordered = [...edits].sort((a, b) => a.start - b.start || a.end - b.end);
  let result = '';
  let done = 0;
  for (const { start, end, text: replacement } of ordered) {
    if (start < done || end < start || end > text.length)
      throw new RangeError('edits overlap or lie outside of the text');
    result += text.slice(done, start) + replacement;
    done = end;
  }
  return result + text.slice(done);
}

/** A stretch of the text between two rounds of edits: one that the first wrote, or that the second replaces. */
interface Stretch {
  readonly start: number;
  readonly end: number;
  /** How much longer the first edit made the text. */
  readonly grown: number;
}

/** The edits that do at once what two rounds of edits do, the second of them to the text after the first. */
export function composed(
  text: string,
  first: readonly TextEdit[],
  second: readonly TextEdit[],
): readonly TextEdit[] {
  const between = applyEdits(text, first);
  const stretches = [
    ...stretchesOf(first),
    ...second.map(({ start, end }) => ({ start, end, grown: 0 })),
  ].sort((a, b) => a.start - b.start || a.end - b.end);
  const edits: TextEdit[] = [];
  let shift = 0;
  for (let at = 0; at < stretches.length;) {
    const { start } = stretches[at]!;
    let { end } = stretches[at]!;
    let grown = 0;
    for (; at < stretches.length && stretches[at]!.start <= end; at++) {
      end = Math.max(end, stretches[at]!.end);
      grown += stretches[at]!.grown;
    }
    const inside = second
      .filter((one) => one.start >= start && one.end <= end)
      .map((one) => ({ ...one, start: one.start - start, end: one.end - start }));
    const written = applyEdits(between.slice(start, end), inside);
    edits.push({ start: start - shift, end: end - shift - grown, text: written });
    shift += grown;
  }
  return edits;
}

/** Where the texts of edits are after them. */
function stretchesOf(edits: readonly TextEdit[]): readonly Stretch[] {
  let shift = 0;
  return [...edits]
    .sort((a, b) => a.start - b.start || a.end - b.end)
    .map(({ start, end, text }) => {
      const grown = text.length - (end - start);
      const stretch = { start: start + shift, end: start + shift + text.length, grown };
      shift += grown;
      return stretch;
    });
}
