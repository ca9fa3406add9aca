import type { Span } from '../../draft/draft.ts';

/** What an editor says of a change. */
export interface TextChange {
  readonly rangeOffset: number;
  readonly rangeLength: number;
  readonly text: string;
}

/** Where a span is after a change; undefined where the change touched it, since its words are then others. */
export function moved({ from, to }: Span, { rangeOffset, rangeLength, text }: TextChange): Span | undefined {
  if (rangeOffset >= to) return { from, to };
  if (rangeOffset + rangeLength > from) return undefined;
  const by = text.length - rangeLength;
  return { from: from + by, to: to + by };
}

/** Where a span is after several changes, which an editor names from the end of the text to its beginning. */
export const movedBy = (span: Span, changes: readonly TextChange[]): Span | undefined =>
  changes.reduce<Span | undefined>((at, change) => at && moved(at, change), span);
