import type { Completion } from './completion.ts';
import type { Cursor } from './cursor.ts';
import { depthsOf } from './indents.ts';
import { holding } from './values.ts';
import type { Writing } from './writing.ts';

/**
 * Whole injections with the products of the practice's stock, where one can begin: all but the volume, which only the
 * person who injects knows.
 */
export function injectionsFor(
  cursor: Cursor,
  text: string,
  { tables, root }: Writing,
): readonly Completion[] {
  if (root !== 'note' || cursor.key?.map !== 'injection' || tables.stock.size === 0) return [];
  const write = writer(cursor, text);
  if (write === undefined) return [];
  return [...tables.stock.values()].map((product, index) => ({
    label: product.name,
    kind: 'value',
    detail: holding(product),
    help: 'An injection of this product of the practice; its volume is to be typed.',
    start: cursor.start,
    end: cursor.end,
    insert: write(product.name),
    caretBack: 0,
    filter: `${product.name} ${product.agent.name}`,
    sort: `0${String(index).padStart(3, '0')}`,
    again: false,
    whole: false,
  }));
}

/** How an injection is written here: as the first keys of a list item, below its key, or between brackets. */
function writer(cursor: Cursor, text: string): ((name: string) => string) | undefined {
  const { place, flow, present, column, lead, start, end } = cursor;
  // Nothing may be on the line that this would take along.
  if (/[^\s,}\]]/.test(restOfRow(text, end)) || present.size > 0) return undefined;
  if (flow) return place === 'key' ? (name) => `product: ${quoted(name)}, volume: ` : undefined;
  const inner = ' '.repeat(column + lead.length);
  if (place === 'key') {
    const pad = atRowStart(text, start) ? ' '.repeat(column) : '';
    return (name) => `${pad}${lead}product: ${plain(name)}\n${inner}volume: `;
  }
  if (text[start - 1] !== ':' && text[start - 2] !== ':') return undefined;
  const item = ' '.repeat(column + depthsOf(text).list);
  return (name) => `\n${item}- product: ${plain(name)}\n${item}  volume: `;
}

const restOfRow = (text: string, end: number): string =>
  /^[^\r\n#]*/.exec(text.slice(end, end + 400))?.[0] ?? '';

const atRowStart = (text: string, start: number): boolean =>
  start === 0 || /[\r\n]/.test(text[start - 1] ?? '');

/** A name that YAML would take for something else is written in quotes. */
const plain = (name: string): string =>
  /^[\w]/.test(name) && !/: |:$| #/.test(name) ? name : JSON.stringify(name);

const quoted = (name: string): string => (/^\w[^,:{}[\]#]*$/.test(name) ? name : JSON.stringify(name));
