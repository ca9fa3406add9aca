import type { TextEdit } from './finding.ts';

/**
 * The text after all edits. Their offsets are those of the text given; they may stand in any order.
 * @throws RangeError where two edits overlap or one lies outside of the text
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
