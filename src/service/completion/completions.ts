import type { KeyShape } from '../../note/tree/shape.ts';
import { spelled } from './british.ts';
import { cursorAt, type Cursor } from './cursor.ts';
import type { Completion } from './completion.ts';
import { depthsOf, type Depths } from './indents.ts';
import { injectionsFor } from './injections.ts';
import { Known } from './known.ts';
import { valuesFor, type Offered } from './values.ts';
import type { Writing } from './writing.ts';

/** What can be typed at an offset. The text may be half typed and broken; what is offered never breaks it. */
export function completionsAt(text: string, offset: number, writing: Writing): readonly Completion[] {
  const cursor = cursorAt(text, offset, writing.shapes, writing.root);
  if (cursor.place === 'nowhere' || cutsStructure(cursor, text)) return [];
  if (cursor.place === 'key')
    return [...injectionsFor(cursor, text, writing), ...keysFor(cursor, text, writing)];
  return [...injectionsFor(cursor, text, writing), ...valuesAt(cursor, text, writing)];
}

/** Whether what would be replaced is more than one word or value, or is cut off within one: by a bracket, a quote, a key. */
function cutsStructure({ place, start, end, flow }: Cursor, text: string): boolean {
  const replaced = text.slice(start, end).trim();
  if (/^(?:"[^"\\]*"|'[^']*')$/.test(replaced)) return false;
  if (/[{}[\]]|:\s|,$/.test(replaced) || (flow && /["']/.test(replaced))) return true;
  return place === 'key' && /^(?:#|[ \t]*[[{"'])/.test(text.slice(end, end + 20));
}

function keysFor(cursor: Cursor, text: string, { tables }: Writing): readonly Completion[] {
  const { map, present, start, end } = cursor;
  if (map === undefined) return [];
  const colon = /^[ \t]*:/.test(text.slice(end, end + 20));
  // Inside brackets a key before another needs the comma that parts them.
  const tail = cursor.flow && !colon && /^[ \t]*[^\s,}\]#]/.test(text.slice(end, end + 80)) ? ', ' : '';
  const pad = cursor.flow || !atRowStart(text, start) ? '' : padOf(cursor, text, colon);
  const depths = depthsOf(text);
  return map.shape.keys.flatMap((key, index): Completion[] => {
    if (present.has(key.key)) return [];
    const required = map.shape.required.includes(key.key);
    const label = spelled(key.key, tables.practice.spelling, (word) => key.aliases.includes(word));
    return [
      {
        label,
        kind: 'key',
        detail: required ? 'needed' : '',
        help: key.description,
        start,
        end,
        insert: `${pad}${cursor.lead}${label}${colon ? '' : opening(key, cursor, depths)}${tail}`,
        caretBack: tail.length,
        filter: [key.key, ...key.aliases].join(' '),
        sort: `${required ? 0 : 1}${String(index).padStart(3, '0')}`,
        // Only what opens a part asks on: after a key that wants a fact the first value would be one Enter away.
        again: !colon && opensPart(key, cursor),
        whole: false,
      },
    ];
  });
}

/** The indentation of a key: that of the part it joins, or its own where it has its value already. */
const padOf = ({ column, start, end }: Cursor, text: string, isKey: boolean): string =>
  isKey ? (/^[ \t]*/.exec(text.slice(start, end))?.[0] ?? '') : ' '.repeat(column);

const atRowStart = (text: string, start: number): boolean =>
  start === 0 || /[\r\n]/.test(text[start - 1] ?? '');

/** Whether a key is followed by lines of its own: a map or a list of maps. */
const opensPart = (key: KeyShape, { flow }: Cursor): boolean =>
  !flow && key.map !== undefined && (key.text === undefined || key.text === '(dictated)');

/** What follows a key: its value on the same line, or the first line of a part. */
function opening(key: KeyShape, cursor: Cursor, depths: Depths): string {
  if (!opensPart(key, cursor)) return ': ';
  const { column, lead } = cursor;
  const inner = ' '.repeat(column + lead.length + (key.list ? depths.list : depths.map));
  return `:\n${inner}${key.list ? '- ' : ''}`;
}

function valuesAt(cursor: Cursor, text: string, writing: Writing): readonly Completion[] {
  const { key, start, end, flow, typed } = cursor;
  if (key === undefined) return [];
  const known = new Known(text, cursor, writing);
  // In a gap everything fits, as where nothing is typed yet.
  const gap = typed === '??' ? ['??'] : [];
  // One item of a list, or one of several between brackets, may be followed by more.
  const whole = text.slice(0, start).trimEnd().endsWith(':');
  return valuesFor({ key, cursor, known, ...writing }).map((offered, index) => ({
    label: offered.text.trim(),
    kind: 'value',
    detail: offered.detail ?? '',
    help: '',
    start,
    end,
    insert: `${blank(text, start)}${flow ? quoted(offered) : offered.text}`,
    caretBack: offered.caretBack ?? 0,
    filter: [...gap, offered.text.trim(), ...(offered.synonyms ?? [])].join(' '),
    sort: String(index).padStart(4, '0'),
    again: false,
    whole: whole && offered.caretBack === undefined && offered.more !== true,
  }));
}

/** A value needs a space after its colon. */
const blank = (text: string, start: number): string => (text[start - 1] === ':' ? ' ' : '');

/** Inside brackets a comma ends a plain value, so such a value is written in quotes. */
const quoted = ({ text, row }: Offered): string =>
  row !== true && /[,:{}[\]#]/.test(text) ? `"${text}"` : text;
