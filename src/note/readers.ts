import { readQuantity } from './quantity.ts';
import { readMoment } from './dates.ts';
import type { Args } from './finding.ts';

/** A fault or remark about a text, at characters `from` to `to` of it. */
export interface Remark {
  readonly code: string;
  readonly form?: string;
  readonly args?: Args;
  readonly from?: number;
  readonly to?: number;
  readonly data?: unknown;
}

/** What a reader makes of a text; a text may be readable and still deserve a remark. */
export interface Reading<T> {
  readonly value: T | undefined;
  readonly remarks: readonly Remark[];
}

export type Reader = (text: string, key: string) => Reading<unknown>;

const verbatim: Reader = (text) => ({ value: text, remarks: [] });

/** The readers by the name that the schema's `x-reads` uses. */
export const readers: ReadonlyMap<string, Reader> = new Map<string, Reader>([
  ['text', verbatim],
  ['word', verbatim],
  ['site', verbatim],
  [
    'date',
    (text) => {
      const r = readMoment(text);
      return { value: r.value?.date, remarks: r.remarks };
    },
  ],
  ['moment', readMoment],
  ['mass', (text) => readQuantity(text, 'mass')],
  ['volume', (text) => readQuantity(text, 'volume')],
  ['concentration', (text) => readQuantity(text, 'concentration')],
]);
