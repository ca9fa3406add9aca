import { readQuantity } from './quantity.ts';
import { readMoment } from './dates.ts';
import type { Reading } from './reading.ts';

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
