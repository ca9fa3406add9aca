import type { Report } from '../../note/tree/finding.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import { nearest, type Nearest } from '../../note/text/nearest.ts';
import { isOneSlip } from '../../note/words/mentions/slips.ts';
import { isAllDenied, readMentions, type Mention } from '../../note/words/mentions/read.ts';
import { phrasesOf } from '../../note/words/phrases.ts';
import { within } from '../../note/tree/tree.ts';
import type { Tables } from '../../practice/tables.ts';
import { allergyNames, type AllergyRow } from '../lookups.ts';
import type { Check } from '../check.ts';
import { wordFix } from '../word-fix.ts';
import { format } from '../sources.ts';

/** How the names of local anesthetics end, also where a letter is left out, so that one in no table is not passed over. */
const endsAsCaine = /(?<!\p{L})\p{L}+ca(?:ines?|ins?|nes?)(?!\p{L})/giu;
const otherWords = /^(?:hurricane|arcane|sugarcane)s?$/i;

const namesCaine = (text: string): boolean =>
  (text.match(endsAsCaine) ?? []).some((ending) => !otherWords.test(ending));

/** Shorter words are too near to too many others, unless they are surely a slip of one. */
const shortest = 6;
const shortestSure = 4;

/** What is said of an allergy without naming another. */
const aside =
  /^(?:(?:an?|the|all|any|only|other|some|mild|severe|moderate|possible|known|unknown|reaction|reported|as|in|child|childhood|adult|years|ago|per|chart|topical|oral|IV|local|skin|etc|types?|kinds?|allergy|allergies|allergic|to)[\s.]*)+$/i;

const part = /[^,;/&+]+?(?=\sand\s|[,;/&+]|$)/gi;

function judge(leaf: Leaf<string>, tables: Tables): Report | undefined {
  const text = leaf.value;
  if (text === undefined || tables.allergens.find(text) !== undefined) return undefined;
  const mentions = readMentions(text, allergyNames(tables));
  const [first] = mentions;
  if (first === undefined)
    return isAllDenied(text, allergyNames(tables)) ? undefined : unknown(leaf, text, tables);
  const order = mentions.find(({ row, why }) => why === 'order' && !isIrrelevant(row));
  if (order !== undefined) return { at: leaf, form: 'denied', args: { text, word: order.row.name } };
  return unknownPart(leaf, text, mentions, tables);
}

const isIrrelevant = (row: AllergyRow): boolean =>
  row.of === 'allergens' && row.allergen.kind === 'irrelevant';

/** A text that names nothing that is known: a slip of the hand, or a word of which nothing can be said. */
function unknown(leaf: Leaf<string>, text: string, tables: Tables): Report | undefined {
  if (itemsOf(text).every(({ word }) => tables.irrelevantDrug.test(word))) return undefined;
  const near = nearTo(text, tables);
  if (near !== undefined && (text.length >= shortest || near.sure)) {
    const harmless = tables.allergens.find(near.word)?.kind === 'irrelevant';
    const word = writtenFor(near.word, tables);
    const args = { text, word };
    const form = near.sure ? 'meant' : 'main';
    // That a trade name was meant is a question: the fix writes the generic word.
    const data: Nearest = word === near.word ? near : { ...near, word, sure: false };
    return { at: leaf, form, args, data, ...(harmless ? { severity: 'information' } : {}) };
  }
  if (namesCaine(text)) return { at: leaf, form: 'caine', args: { text } };
  const held = heldIn(text, tables);
  if (held !== undefined) return { at: leaf, form: 'together', args: { text, word: held } };
  return { at: leaf, form: 'unknown', args: { text } };
}

/** The thing that a text is probably a slip of: with its first letter, or else one slip away from all of it. */
function nearTo(text: string, tables: Tables): Nearest | undefined {
  if (text.length < shortestSure) return undefined;
  const meaning = (word: string): unknown => meantBy(word, tables);
  const near = nearest(text, wordsLike(text, tables), meaning);
  if (near !== undefined || text.length < shortest) return near;
  const typed = text.toLowerCase();
  const words = [tables.allergens, tables.agents]
    .flatMap(({ wordsRead }) => [...wordsRead])
    .filter((word) => word.length >= shortest && isOneSlip(typed, word.toLowerCase()));
  const whole = nearest(text, words, meaning);
  // A word that is one itself may be anything; of several words the others say that it is not.
  return whole?.other === true && !/[ /-]/.test(text) ? undefined : whole;
}

/** Shorter words are by chance within others. */
const shortestHeld = 5;

/** A thing with which an unknown word begins or ends, as where two answers ran into one: "bacitracinnone". */
function heldIn(text: string, tables: Tables): string | undefined {
  const typed = text.toLowerCase().split(/[^a-z]+/);
  const isHeld = (word: string): boolean =>
    word.length >= shortestHeld &&
    tables.allergens.find(word)?.kind !== 'irrelevant' &&
    typed.some((one) => one.length > word.length && (one.startsWith(word) || one.endsWith(word)));
  for (const { words } of [tables.allergens, tables.agents])
    for (const word of words) if (isHeld(word)) return word;
  return undefined;
}

/** The items of a list that was written as one text. */
const itemsOf = (text: string): readonly { readonly word: string; readonly from: number }[] =>
  Array.from(text.matchAll(part), ({ 0: item, index }) => {
    const word = item.replace(/^\s*and\s+/i, '').trim();
    return { word, from: index + item.indexOf(word) };
  });

/** The first item of a list in one text that names nothing known. Longer ones mention what happened. */
function unknownPart(
  leaf: Leaf<string>,
  text: string,
  mentions: readonly Mention<AllergyRow>[],
  tables: Tables,
): Report | undefined {
  // Both come in the order of the text.
  let next = 0;
  for (const { word, from } of itemsOf(text)) {
    const to = from + word.length;
    while (next < mentions.length && mentions[next]!.to <= from) next += 1;
    if (!mayName(word, tables)) continue;
    if (next < mentions.length && mentions[next]!.from < to) continue;
    if (phrasesOf(tables.reactions).mentionsIn(word).length > 0) continue;
    const form = namesCaine(word) ? 'caine' : 'unknown';
    return { at: within(leaf.node, from, to), form, args: { text: word } };
  }
  return undefined;
}

/** Whether a part of a list may be the name of something that nobody knows. */
const mayName = (word: string, tables: Tables): boolean =>
  word !== '' &&
  word.split(/\s+/, 3).length <= 2 &&
  !aside.test(word) &&
  !isAllDenied(word, allergyNames(tables)) &&
  !tables.irrelevantDrug.test(word);

/** The row that a word means; an anesthetic is one as an allergen too. */
const meantBy = (word: string, { allergens, agents }: Tables): unknown =>
  agents.find(word) ?? allergens.find(word);

/** What is written for a word: itself, or the generic word of a trade name. */
function writtenFor(word: string, { allergens, agents }: Tables): string {
  for (const { table, row } of [
    { table: agents, row: agents.find(word) },
    { table: allergens, row: allergens.find(word) },
  ])
    if (row !== undefined) return isWritten(table.words, word) ? word : row.name;
  return word;
}

function isWritten(words: Iterable<string>, word: string): boolean {
  for (const one of words) if (one === word) return true;
  return false;
}

/** Words of both tables with the first letter of the text, which slips of the hand seldom change. */
function wordsLike(text: string, tables: Tables): readonly string[] {
  const found: string[] = [];
  const first = text.charAt(0).toLowerCase();
  for (const { wordsRead } of [tables.allergens, tables.agents])
    for (const word of wordsRead) if (word.charCodeAt(0) === first.charCodeAt(0)) found.push(word);
  return found;
}

export const check: Check = {
  code: 'allergy/unclear-entry',
  severity: 'warning',
  title: 'An allergy that can be misread',
  why: 'A misspelled allergy protects nobody: no table knows it, and every check skips it. "No latex" is read as an order by one and as an answer by another. A word that no table knows is information, so that silence never means that nobody looked; foods, pollen and medicines that are not used here are left out.',
  sources: [format],
  milder: { unknown: 'information' },
  messages: {
    meant: '`{text}` is not a known allergen; did you mean {word}? It is read as that.',
    main: '`{text}` is not a known allergen; did you mean {word}? As written, nothing is checked against it.',
    together:
      '`{text}` is not a known allergen, but it contains {word}. As written, nothing is checked against it; write each allergy by itself.',
    caine:
      '`{text}` sounds like a local anesthetic and is not known here, so nothing is checked against it. Write its generic name, or `local anesthetics`.',
    unknown:
      '`{text}` is not known here, so nothing is checked against it. If it is a drug, a dressing or anything else used on skin, write its generic name.',
    denied:
      '`{text}` may mean that {word} must be avoided, or that there is no such allergy. Write `{word}`, or `none`.',
  },
  unclear: ({ form, args }) =>
    form === 'denied' ? { key: 'allergies', name: String(args['word']) } : undefined,
  find({ note, tables }) {
    const found: Report[] = [];
    for (const { to } of note.patient?.allergies ?? []) {
      const report = to === undefined ? undefined : judge(to, tables);
      if (report !== undefined) found.push(report);
    }
    return found;
  },
  fix({ text }, { form, data, start, end }) {
    if (form !== 'main' && form !== 'meant') return [];
    const near = data as Nearest;
    const typed = text.slice(start, end);
    return /^["']/.test(typed) ? [] : [wordFix(near.word, near, [{ start, end, text: near.word }])];
  },
};
