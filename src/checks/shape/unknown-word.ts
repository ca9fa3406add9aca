import type { WordLeaf } from '../../note/bind.ts';
import { nearest, type Nearest } from '../../note/text/nearest.ts';
import { once } from '../../note/text/once.ts';
import type { Report, Severity } from '../../note/tree/finding.ts';
import { within } from '../../note/tree/tree.ts';
import { understand } from '../../note/words/understood.ts';
import type { Tables } from '../../practice/tables.ts';
import { qualifiersOf } from '../../practice/qualifiers.ts';
import type { Check } from '../check.ts';
import { wordFix } from '../word-fix.ts';
import { lookups, type Lookup } from './_words.ts';
import { format } from '../sources.ts';

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
  const near = nearest(text, table.words, (word) => table.find(word));
  const name = near && table.find(near.word)?.name;
  return near === undefined || name?.toLowerCase() !== near.word ? near : { ...near, word: name };
}

const longestText = 60;
const shortened = (text: string): string =>
  text.length > longestText ? `${text.slice(0, longestText)}…` : text;

/** Where a word that nobody knows may hide a danger: current, a fluid that destroys a test, a test that needs a medium. */
const hiding: ReadonlySet<string> = new Set(['hemostasis', 'media', 'tests']);
/** Where checks go by the word, so that a text of which nothing is understood leaves them with nothing to judge. */
const judgedBy: ReadonlySet<string> = new Set(['methods', 'preparations', 'authorities']);

const severityOf = (table: string, understood: boolean): Severity =>
  hiding.has(table) || (!understood && judgedBy.has(table)) ? 'warning' : 'information';

/** What is unknown of a text: the whole, or its words beside those that are known. */
function reportsOf(word: WordLeaf, table: Lookup, tables: Tables): readonly Report[] {
  const { leaf } = word;
  const passing = qualifiersOf(tables.qualifiers, word.table);
  const { rows, unknown } = understand(table, leaf.text, passing);
  if (rows.length === 0) return [wholeReport(word, table)];
  const known = [...new Set(rows.map(({ name }) => name))].join(', ');
  const severity = severityOf(word.table, true);
  return unknown.map((one) => {
    const text = shortened(one.text);
    const at = within(leaf.node, one.from, one.to);
    const near = nearestWord(one.text, table);
    if (near === undefined || leaf.node.inner < 0)
      return { at, form: 'part', severity, args: { text, known } };
    return { at, form: 'nearPart', severity, args: { text, known, near: near.word }, data: near };
  });
}

function wholeReport({ leaf, table: name }: WordLeaf, table: Lookup): Report {
  const near = nearestWord(leaf.text, table);
  const text = shortened(leaf.text);
  const severity = severityOf(name, false);
  if (near === undefined) return { at: leaf, severity, args: { text, known: knownIn(table) } };
  const form = near.sure ? 'meant' : 'near';
  return { at: leaf, form, severity, args: { text, near: near.word }, data: near };
}

/** The first words of a table. */
function knownIn({ rows }: Lookup): string {
  const names = rows.slice(0, mostShown).map(({ name }) => name);
  return names.join(', ') + (rows.length > mostShown ? ', …' : '');
}

const mostReports = 100;

/** A report of a word with another place where the note has it. */
const withPlace = (report: Report, { at }: Report): Report => ({
  ...report,
  related: [...(report.related ?? []), { start: at.start, end: at.end, form: 'again', args: {} }],
});

export const check: Check = {
  code: 'shape/unknown-word',
  severity: 'warning',
  title: 'A word that the tables do not know',
  why: 'A check cannot judge a word that it does not know, and stays silent about it.',
  sources: [format],
  messages: {
    main: '`{text}` is not a word that is known here, so it is not judged. Known words: {known}. The practice file can add words.',
    meant: '`{text}` is not a word that is known here. Did you mean `{near}`? It is read as that.',
    near: '`{text}` is not a word that is known here, so it is not judged. Did you mean `{near}`?',
    part: '`{text}` is not known here. Understood and judged of the text: {known}.',
    nearPart:
      '`{text}` is not known here. Did you mean `{near}`? Understood and judged of the text: {known}.',
    again: 'The same word again.',
    more: '{count} more words are not known.',
  },
  find({ source, tables }) {
    const found = new Map<string, Report>();
    let count = 0;
    const own = lookupsOf(tables);
    for (const word of source.words) {
      const table = own.get(word.table);
      if (table === undefined || table.find(word.leaf.text) !== undefined) continue;
      for (const report of reportsOf(word, table, tables)) {
        const key = `${word.table} ${String(report.args?.['text'] ?? '').toLowerCase()}`;
        const same = found.get(key);
        if (same !== undefined) found.set(key, withPlace(same, report));
        else if (++count <= mostReports) found.set(key, report);
      }
    }
    const last = source.words.at(-1);
    const reports = [...found.values()];
    if (count > mostReports && last !== undefined)
      reports.push({ at: last.leaf, form: 'more', args: { count: count - mostReports } });
    return reports;
  },
  fix({ text }, { start, end, related, data }) {
    if (data === undefined) return [];
    const near = data as Nearest;
    const edits = [{ start, end }, ...related].map((place) => {
      const quote = /^["']/.exec(text.slice(place.start, place.end))?.[0] ?? '';
      return { start: place.start, end: place.end, text: quote + near.word + quote };
    });
    return [wordFix(near.word, near, edits, `Change to ${near.word}`)];
  },
};
