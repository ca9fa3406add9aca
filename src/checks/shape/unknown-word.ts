import type { Check } from '../check.ts';
import type { WordLeaf } from '../../note/bind.ts';
import { nearest, type Nearest } from '../../note/text/nearest.ts';
import { once } from '../../note/text/once.ts';
import { phrasesOf } from '../../note/words/phrases.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Report } from '../check.ts';
import { lookups, type Lookup } from './_words.ts';

type Lookups = ReadonlyMap<string, Lookup>;

/** The tables of a practice by name. */
const lookupsOf = once((tables: Tables): Lookups => {
  const own = new Map(Array.from(lookups, ([name, of]) => [name, of(tables)] as const));
  return own;
});

const mostShown = 8;

/** "No cautery" is two letters from "hot cautery", and says the opposite. */
const denied = /^(?:no|not|without|never)\b/i;

/** The nearest word, as its row writes it. */
function nearestWord(text: string, table: Lookup): Nearest | undefined {
  if (denied.test(text)) return undefined;
  const near = nearest(text, table.words);
  const name = near && table.find(near.word)?.name;
  return near === undefined || name?.toLowerCase() !== near.word ? near : { ...near, word: name };
}

/** What stands between the words of a list that was typed as one text. */
const joints = /\s*(?:,\s*(?:and|then|plus)\s|,|\+|&|\s(?:and|then|plus)\s)\s*(?:an?\s)?/i;

const longestList = 200;

/** The known words of which a text is made, which were meant as a list; undefined where it is anything else. */
function listIn({ leaf, list }: WordLeaf, table: Lookup): readonly string[] | undefined {
  const parts = list && leaf.text.length <= longestList ? leaf.text.trim().split(joints) : [];
  return parts.length > 1 && parts.every((part) => table.find(part) !== undefined) ? parts : undefined;
}

/** Of fluids the strength may stand beside the word, of pressure how long. */
const measured: ReadonlySet<string> = new Set(['hemostasis', 'preparations', 'dressings', 'media']);

const measure =
  /\(?\d{1,3}(?:\.\d{1,2})? ?%\)?|(?:\b(?:x|for) ?)?\b\d{1,3} ?(?:min|mins|minutes?|s|sec|secs|seconds?)\b/gi;

/** Whether a text is a known word with its strength, or how long it was done. */
function isMeasured({ leaf, table: name }: WordLeaf, table: Lookup): boolean {
  if (!measured.has(name) || leaf.text.length > longestList || !/\d/.test(leaf.text)) return false;
  return table.find(leaf.text.replace(measure, ' ')) !== undefined;
}

/** The words of a longer text that are judged all the same. */
const partsIn = (text: string, table: Lookup): readonly string[] => [
  ...new Set(
    phrasesOf(table)
      .assertedIn(text)
      .map(({ name }) => name),
  ),
];

function report(word: WordLeaf, table: Lookup, tables: Tables): Report {
  const { leaf } = word;
  const map =
    word.table === 'closures' && leaf.text.length <= longestList ? stitchesIn(leaf.text, tables) : undefined;
  if (map !== undefined)
    return { at: leaf, form: 'stitches', args: { map }, data: { near: map, sure: false, bare: true } };
  const parts = leaf.node.inner === leaf.start ? listIn(word, table) : undefined;
  if (parts !== undefined) {
    const text = parts.join(', ');
    return { at: leaf, form: 'list', args: { text }, data: { near: `[${text}]`, sure: true } };
  }
  const near = nearestWord(leaf.text, table);
  const text = leaf.text.length > 60 ? `${leaf.text.slice(0, 60)}…` : leaf.text;
  const within = near === undefined && measured.has(word.table) ? partsIn(leaf.text, table) : [];
  if (within.length > 0) return { at: leaf, form: 'part', args: { text, known: within.join(', ') } };
  return near === undefined
    ? { at: leaf, args: { text, known: knownIn(table) } }
    : { at: leaf, form: 'near', args: { text, near: near.word }, data: { near: near.word, sure: near.sure } };
}

/** The first words of a table. */
function knownIn({ rows }: Lookup): string {
  const names = rows.slice(0, mostShown).map(({ name }) => name);
  return names.join(', ') + (rows.length > mostShown ? ', …' : '');
}

const sutureSize = /\b(\d{1,2})[-/]0\b/g;

const stitchCount = /\bx ?(\d{1,2})\b|\b(\d{1,2})(?= (?:simple|interrupted|running|stitch|suture))/gi;

const stitchWords = /\b(?:stitch(?:es)?|sutures?)\b/gi;

const techniques =
  /\b(?:(?:simple|running|interrupted|continuous|subcuticular|horizontal|vertical|mattress|figure of eight|figure of 8)\b ?)+/gi;

/** A suture in one line as the map that says the same; undefined where a word would be lost. */
function stitchesIn(text: string, { materials }: Tables): string | undefined {
  let rest = text;
  const taken = (pattern: RegExp): readonly string[] => {
    const found = Array.from(rest.matchAll(pattern), ([whole, one, two]) => (one ?? two ?? whole).trim());
    rest = rest.replace(pattern, ' ');
    return found;
  };
  const [size, ...sizes] = taken(sutureSize);
  const [count, ...counts] = taken(stitchCount);
  const [technique, ...others] = taken(techniques);
  taken(stitchWords);
  const material = materials.find(rest.replace(/[,.()]/g, ' '))?.name;
  if (size === undefined || material === undefined || sizes.length + counts.length + others.length > 0)
    return undefined;
  const rows = [
    `material: ${material}`,
    `size: ${size}-0`,
    ...(technique === undefined ? [] : [`technique: ${technique}`]),
    ...(count === undefined ? [] : [`count: ${count}`]),
  ];
  return `{${rows.join(', ')}}`;
}

const mostReports = 100;

export const check: Check = {
  code: 'shape/unknown-word',
  severity: 'warning',
  title: 'A word that the tables do not know',
  why: 'Checks that go by a word can not judge one that they do not know, and stay silent about it.',
  sources: [{ source: 'format', mark: 'format' }],
  messages: {
    main: '`{text}` is not a word that is known here, so it is not judged. Known are: {known}. The practice file can add words.',
    near: '`{text}` is not a word that is known here, so it is not judged. Did you mean `{near}`?',
    list: 'Several words stand here as one text, which is not judged. Put them between brackets: `[{text}]`.',
    part: 'Of `{text}` only this is known here, and judged: {known}. Write that, and the rest under remarks.',
    stitches: 'A suture in one line is not judged. Write it as a map: `{map}`.',
    more: '{count} more words are not known.',
  },
  find({ source, tables }) {
    const found: Report[] = [];
    let count = 0;
    const own = lookupsOf(tables);
    for (const word of source.words) {
      const table = own.get(word.table);
      if (table === undefined || table.find(word.leaf.text) !== undefined || isMeasured(word, table))
        continue;
      if (++count <= mostReports) found.push(report(word, table, tables));
    }
    const last = source.words.at(-1);
    if (count > mostReports && last !== undefined)
      found.push({ at: last.leaf, form: 'more', args: { count: count - mostReports } });
    return found;
  },
  fix({ text }, { start, end, data }) {
    if (data === undefined) return [];
    const { near, sure, bare } = data as { near: string; sure: boolean; bare?: true };
    const quote = bare === true ? '' : (/^["']/.exec(text.slice(start, end))?.[0] ?? '');
    const edits = [{ start, end, text: quote + near + quote }];
    return [{ title: `Change to ${near}`, kind: 'spelling', sure, edits }];
  },
};
