import type { KeyShape } from '../note/shape.ts';
import type { WordRow } from '../reference/types.ts';
import type { Cursor } from './cursor.ts';
import type { Writing } from './writing.ts';

/** A value that can be typed. */
export interface Offered {
  readonly text: string;
  readonly detail?: string;
  readonly synonyms?: readonly string[];
}

export interface Asked extends Writing {
  readonly key: KeyShape;
  readonly cursor: Cursor;
  readonly text: string;
}

/** The values that fit a key here, the likeliest first. */
export function valuesFor(asked: Asked): readonly Offered[] {
  return byReader.get(asked.key.reads ?? '')?.(asked) ?? [];
}

const fixed =
  (...texts: readonly string[]) =>
  (): readonly Offered[] =>
    texts.map((text) => ({ text }));

/** Units behind the number that is typed already: the number itself is never proposed. */
const units =
  (...names: readonly string[]) =>
  ({ cursor }: Asked): readonly Offered[] => {
    const number = /^\d+(?:\.\d+)?/.exec(cursor.typed)?.[0];
    return number === undefined ? [] : names.map((unit) => ({ text: `${number}${unit}` }));
  };

const byReader: ReadonlyMap<string, (asked: Asked) => readonly Offered[]> = new Map([
  ['yesno', fixed('yes', 'no')],
  ['mass', (asked: Asked) => units(...(asked.key.key === 'amount' ? [' g'] : [' kg', ' lb']))(asked)],
  ['volume', units(' mL')],
  ['length', units(' mm', ' cm')],
  ['dimensions', units(' mm', ' cm')],
  ['area', units(' cm2')],
  ['age', units(' years', ' months', ' weeks', ' days')],
  ['concentration', units('%', ' mg/mL')],
  ['dilution', fixed('1:100,000', '1:200,000', 'none')],
  ['mixture', fixed('9:1', 'no')],
  ['date', dates],
  ['moment', dates],
  ['word', words],
  ['site', sites],
]);

/** Today and the day of the visit, which are known; no other day is. */
function dates({ key, today, text }: Asked): readonly Offered[] {
  const visit = /^visit:[ \t]*(\d{4}-\d{2}-\d{2})/m.exec(text)?.[1];
  const days = [{ text: today, detail: 'today' }];
  return visit === undefined || visit === today || key.key === 'visit'
    ? days
    : [...days, { text: visit, detail: 'day of the visit' }];
}

function words({ key, tables }: Asked): readonly Offered[] {
  const table = Object.entries(tables).find(([name]) => name === key.words)?.[1] as
    { rows?: readonly WordRow[] } | undefined;
  return (table?.rows ?? []).map(({ name, synonyms }) => ({ text: name, synonyms }));
}

/** Sites with both sides where a side must be said. */
function sites({ tables }: Asked): readonly Offered[] {
  return tables.sites.rows.flatMap(({ name, synonyms, region, side }) =>
    (side === 'needed' ? ['left ', 'right '] : ['']).map((before) => ({
      text: `${before}${name}`,
      synonyms,
      detail: region,
    })),
  );
}
