import { once } from '../note/text/once.ts';
import { remembered } from '../note/text/remembered.ts';
import { phrasesOf } from '../note/words/phrases.ts';
import { tokensOf, type Token } from '../note/words/phrase-tokens.ts';
import type { Tables } from '../practice/tables.ts';

/** What a report asks for, at characters `from` to `to` of it. */
export interface Ask {
  /** What was found, in a few words. */
  readonly name: string;
  readonly urgent: boolean;
  readonly from: number;
  readonly to: number;
}

const words = (text: string): ReadonlySet<string> => new Set(text.split(' '));

const degrees = words('severe severely marked markedly high');
const atypia = words('atypia atypical dysplasia dysplastic atypias');
const degreeMeansNothing = words('elastosis solar sun inflammation');
const edges = words('margin margins edge edges border borders base deep peripheral lateral periphery');
const sure = words(
  'involved involves involving positive transected transects transecting extends extending extend reaches reaching touches touching incompletely abuts abutting extension extended',
);
const denies = words('no not without negative free clear uninvolved cleared never none nor neither');
const unsaid = words('evaluated assessed assessable evaluable');
const steps = words(
  'excision reexcision excise excised reexcise rebiopsy biopsy sampling sample removal excisional mohs resection surgery treatment treat',
);
const advises = words(
  'recommend recommended recommends recommendation advise advised advises suggest suggested suggests consider warranted indicated advisable needed required necessary please should prudent',
);
const orders = words('reexcise rebiopsy excise resubmit');
const refuses = words('no not without none never nor neither unnecessary');
const benign = words(
  'nevus naevus nevi keratosis verruca wart dermatofibroma cyst hemangioma angioma lentigo tag acrochordon fibroma papule neurofibroma lipoma keratoses dermatitis scar acanthoma angiokeratoma ' +
    'comedo granuloma pilomatricoma syringoma',
);

/** Sentences of a report, each with the character at which it begins. */
const sentence = /[^.;\n]+(?:\.(?=\d)[^.;\n]*)*/g;

/** What the clinic asked, which a report repeats before its own words. */
const question =
  /^\s*(?:clinical(?:ly)?|submitted as|pre-?op(?:erative)?|indication|history|hx|rule out|r\/o|requisition)\b/i;

const longestSentence = 1000;

const knownAsk = (name: string, from: number, to: number): Ask => ({ name, urgent: false, from, to });

/** What a report asks for: grave findings, atypia of high degree, margins, advice, and a sample that can't be judged. */
export const asksOf = (text: string, tables: Tables): readonly Ask[] => asksIn(tables)(text);

const asksIn = once((tables: Tables) => remembered((text) => readAsks(text, tables)));

function readAsks(text: string, tables: Tables): readonly Ask[] {
  const asks: Ask[] = [];
  for (const { row, from, to, standing } of phrasesOf(tables.followUp.findings).mentionsIn(text)) {
    if ((standing !== 'asserted' && standing !== 'asked') || isUnit(text, from, to) || isQuestion(text, from))
      continue;
    if (isDeniedAfter(text, to) || isAside(text, from, to)) continue;
    asks.push({ name: row.name, urgent: row.urgent, from, to });
  }
  let whole: readonly Token[] | undefined;
  const tokens = (): readonly Token[] => (whole ??= tokensOf(text));
  for (const { 0: part, index } of text.matchAll(sentence)) {
    if (question.test(part)) continue;
    const ask = inSentence(part, tokens);
    if (ask !== undefined) asks.push(knownAsk(ask, index, index + part.trimEnd().length));
  }
  return asks;
}

function inSentence(part: string, whole: () => readonly Token[]): string | undefined {
  const tokens = tokensOf(part);
  if (isSevere(tokens)) return 'severe atypia';
  if (isAdvice(tokens)) return 'advice of the laboratory';
  if (isAtMargin(tokens) && (has(whole(), atypia) || !has(whole(), benign))) return 'tumor at the margin';
  return undefined;
}

/** `MM` is melanoma only in capitals and after no number. */
const isUnit = (text: string, from: number, to: number): boolean => {
  const word = text.slice(from, to);
  return word.toLowerCase() === 'mm' && (word !== 'MM' || /[\dx×]\s*$/i.test(text.slice(0, from)));
};

/** Words that say that there is no sample only beside a word for it, or nearly alone: not "lost rete ridges". */
const broad = words('empty lost missing misplaced degraded destroyed');
const fewWords = 3;
const samples = words('specimen sample tissue container bottle jar vial biopsy cassette block');

function isAside(text: string, from: number, to: number): boolean {
  if (!broad.has(text.slice(from, to).toLowerCase())) return false;
  const begin = Math.max(...['.', ';', '\n'].map((mark) => text.lastIndexOf(mark, from - 1))) + 1;
  const end = text.slice(to).search(/[.;\n]/);
  const sentence = tokensOf(text.slice(begin, end < 0 ? text.length : to + end));
  return sentence.length > fewWords && !has(sentence, samples);
}

function isQuestion(text: string, at: number): boolean {
  // A sentence begins not that far before what it says.
  const near = text.slice(Math.max(0, at - longestSentence), at);
  const begin = Math.max(...['.', ';', '\n'].map((mark) => near.lastIndexOf(mark))) + 1;
  return question.test(near.slice(begin));
}

const isDeniedAfter = (text: string, to: number): boolean =>
  /^[^.;,]{0,30}\b(?:not|are not|is not) (?:identified|seen|present|found|noted|detected|demonstrated)\b/i.test(
    text.slice(to, to + 60),
  );

const has = (tokens: readonly Token[], set: ReadonlySet<string>): boolean =>
  tokens.some(({ text }) => set.has(text));

/** A high degree and atypia in one sentence, in any order, and neither denied. */
function isSevere(tokens: readonly Token[]): boolean {
  const degree = tokens.findIndex(({ text }, at) => degrees.has(text) && !isHighAlone(tokens, at));
  const found = tokens.findIndex(({ text }) => atypia.has(text));
  if (degree < 0 || found < 0 || degreeMeansNothing.has(tokens[degree + 1]?.text ?? '')) return false;
  return !deniedBefore(tokens, Math.min(degree, found)) && !deniedBefore(tokens, degree);
}

/** "High" is a degree only before "grade". */
const isHighAlone = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]!.text === 'high' && tokens[at + 1]?.text !== 'grade';

const deniedBefore = (tokens: readonly Token[], at: number): boolean =>
  tokens.slice(Math.max(0, at - 4), at).some(({ text }) => denies.has(text));

/** Words that a lesion is at the margin. */
function isAtMargin(tokens: readonly Token[]): boolean {
  const texts = tokens.map(({ text }) => text);
  const joined = texts.join(' ');
  if (
    /\bincomplete(?:ly)? (?:excis|remov)/.test(joined) ||
    /\bnot (?:completely|entirely|fully) (?:excised|removed)/.test(joined)
  )
    return true;
  if (/\b(?:not|never) (?:clear|free|cleared)\b/.test(joined)) return has(tokens, edges);
  if (texts.includes('transected')) return !deniedBefore(tokens, texts.indexOf('transected'));
  if (!has(tokens, edges) || has(tokens, unsaid)) return false;
  const at = texts.findIndex((text) => sure.has(text));
  if (at >= 0) return !deniedBefore(tokens, at);
  const place = /\b(?:present|seen|focally|identified|tumor|focal|close|broadly) (?:at|to|on)\b/.exec(joined);
  return place !== null && !/\b(?:no|not|without|free|negative|clear)\b/.test(joined);
}

/** "Re-excise" and "re-excision" are two tokens with a hyphen between. */
const isOrder = (tokens: readonly Token[]): boolean =>
  tokens.some(({ text }, at) => text === 're' && ['excise', 'biopsy'].includes(tokens[at + 1]?.text ?? ''));

/** Advice to take more tissue out, unless it is denied. */
function isAdvice(tokens: readonly Token[]): boolean {
  const step = tokens.findIndex(({ text }) => steps.has(text));
  if (step < 0 || !(has(tokens, advises) || has(tokens, orders) || isOrder(tokens))) return false;
  return !tokens.some(({ text }, at) => refuses.has(text) && Math.abs(at - step) < 6);
}
