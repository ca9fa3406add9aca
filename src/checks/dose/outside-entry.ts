import { drugIn } from '../../dose/injected.ts';
import type { Event, Injection, Note, Procedure } from '../../note/generated/types.ts';
import type { Report, TextEdit } from '../../note/tree/finding.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import { within } from '../../note/tree/tree.ts';
import { asMeant } from '../../note/words/as-meant.ts';
import { readInjectionLine } from '../../note/words/dictated.ts';
import { isOneSlip } from '../../note/words/mentions/slips.ts';
import { phrasesOf } from '../../note/words/phrases.ts';
import type { Tables } from '../../practice/tables.ts';
import type { AgentRow } from '../../reference/agents.ts';
import type { Check, Subject } from '../check.ts';
import { format } from '../sources.ts';
import { rowsIn } from '../words.ts';
import { beginEntry, type Place } from './_begin-entry.ts';

/** A free text with the part of the note to which an injection told there belongs. */
interface Told extends Place {
  readonly leaf: Leaf<string>;
  /** Whether it is of an event, so that only the entries of the event are the same injection. */
  readonly later?: true;
}

function* textsOf({
  patient,
  procedures = [],
  events = [],
  remarks = [],
  addenda = [],
}: Note): Generator<Told> {
  for (const leaf of patient?.medications ?? []) yield { leaf };
  for (const procedure of procedures) yield* textsOfProcedure(procedure);
  for (const event of events) yield* textsOfEvent(event);
  for (const leaf of remarks) yield { leaf };
  yield* addenda.flatMap(({ text }) => (text === undefined ? [] : { leaf: text }));
}

function* textsOfProcedure(part: Procedure): Generator<Told> {
  const { hemostasis = [], preparation = [], dressing = [], remarks = [] } = part;
  const lists = [...preparation, ...hemostasis, ...dressing, ...remarks];
  for (const leaf of [part.site, part.landmarks, part.lesion, part.question, part.complications, ...lists])
    if (leaf !== undefined) yield { leaf, beside: leaf, entries: part.anesthetic ?? [] };
}

function* textsOfEvent(part: Event): Generator<Told> {
  for (const leaf of [part.signs, part.action, part.outcome])
    if (leaf !== undefined) yield { leaf, later: true, beside: leaf, entries: part.anesthetic ?? [] };
}

const amount =
  /(?<![\d.,:/])(\d{1,3}(?:\.\d{1,2})?|\.\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten) ?(?:(?:more|extra|additional) )?(ml|cc|g|grams?)s?\b/gi;
/** A number with what may be a unit that is one slip from mL or cc, or run into the next word. */
const slippedAmount =
  /(?<![\d.,:/])(\d{1,3}(?:\.\d{1,2})?|\.\d{1,2})[ ,-]{0,2}(m,l|c,c|[a-z]{1,3}|ml[a-z]{2,12})\b/gi;
/** What only a volume can come before: "2 m more of 1% lidocaine". */
const moreOf = /^,? ?(?:more|extra|additional) (?:of\b|\d|[a-z]*caine)/i;
/** "30 of the 1% later": a number before a strength in which local anesthetics are made, and nothing else is. */
const strength = String.raw`of (?:the )?(?:(?:0?\.(?:25|5|75)|[1-4](?:\.\d)?) ?(?:%|percent)|(?:one|two|three|four|half)(?: a)?[ -]percent)(?! ?(?:hydrogen|peroxide|acetic|acid|alum|tca|salicyl|iod|dextrose|saline|sodium|nacl|formalin|chlorhex|benzoyl|cream|gel))`;
const bareAmount = new RegExp(
  String.raw`(?<![\d.,:/a-z])(\d{1,3}(?:\.\d{1,2})?|one|two|three|four|five|six|seven|eight|nine|ten)(?: more| total)?( )(?=${strength})`,
  'gi',
);
/** Units of other things, and words, that are one slip from mL or cc. */
const otherUnits = /^(?:m[aegimoxy]|cm|al|ac|[du]l)$/i;
const isMilliliters = (unit: string): boolean =>
  unit.length > 3 ||
  unit.includes(',') ||
  ['ml', 'cc'].some((one) => one === unit.toLowerCase() || isOneSlip(unit.toLowerCase(), one));
/** Most texts measure nothing so. */
const worthALook =
  /(?:ml|cc|g|gram)s?\b|\d[ -]{0,2}(?:[a-z]{1,3}|ml[a-z]+)\b|\d (?:more |total )?of\b|percent/i;
const numbers = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** "2% 20 mL": a strength in which local anesthetics are made, and a volume. */
const dose = /(?<![\d.])(?:0?\.(?:25|5|75)|[12]) ?%,? {1,2}\d{1,3}(?:\.\d)? ?(?:ml|cc)\b/i;
/** What else comes in such strengths. */
const solutions =
  /chlorhex|peroxide|iod|acetic|acid|saline|sodium|formalin|alcohol|tca|salicyl|alum|dextrose|hydroquinone/i;
/** Words that mean a local anesthetic without naming one. */
const unnamed = new RegExp(
  String.raw`\b(?:${strength}|local|numb\w*|an(?:a)?esthe(?:tic|tics|tized|tised|sia)|re-?inject\w*|(?:nerve|field|ring) block|topped up)(?:\b|(?<=%))`,
  'i',
);
/** What else is measured so, straight after the amount. */
const other =
  /^(?: of)?(?: [a-z]+){0,2} (?:saline|water|oxygen|o2|blood|fluid|pus|bicarb\w*|triamcinolone|steroid)\b/i;
const notGiven =
  /\b(?:drew up|drawn up|wasted?|discarded?|thrown away|left ?over|unused|not (?:given|used|injected))\b/i;
/** What says that it came on top of what is written. */
const further =
  /\b(?:more|another|extra|additional|added|also|again|further|second|re-?\w*inject\w*|re-?anesthe\w*|topped|omitted|not charted|late entry|supplemental)\b/i;

/** In an entry of its own an amount is no longer more than another. */
const onTop = /\b(ml|cc) (?:more|extra|additional)\b/i;

/** The amounts of anesthetic that entries give, one by one and together, in mL or g. */
interface Amounts {
  readonly each: readonly number[];
  readonly sum: number;
  /** Whether one of them may be what the words say came on top. */
  readonly further: boolean;
}

function amountsOf(entries: readonly Injection[], further: boolean): Amounts {
  const all = entries.flatMap((one) => [one.volume?.value?.amount, one.amount?.value?.amount]);
  const each = all.filter((one) => one !== undefined);
  return { each, sum: each.reduce((sum, one) => sum + one, 0), further };
}

/** Whether an amount that a sentence tells is one of the entries. */
function isEntered(told: number, sentence: string, { each, sum, further: mayBe }: Amounts): boolean {
  return further.test(sentence) ? mayBe && each.includes(told) : each.includes(told) || told === sum;
}

/** Every entry of a note. */
const entriesOf = ({ anesthetic = [], procedures = [], events = [] }: Note): readonly Injection[] => [
  ...anesthetic,
  ...[...procedures, ...events].flatMap((one) => one.anesthetic ?? []),
];

/** The stretch between stops that holds a place: a decimal point is none, nor one within a word. */
function sentenceAt(text: string, from: number, to: number): readonly [number, number] {
  let start = from;
  while (start > 0 && !isStop(text, start - 1)) start -= 1;
  let end = to;
  while (end < text.length && !isStop(text, end)) end += 1;
  return [start, end];
}

const isStop = (text: string, at: number): boolean =>
  /[;\n]/.test(text[at]!) || (text[at] === '.' && !/[\da-z]/.test(text[at + 1] ?? ' '));

/** The first amount of a local anesthetic that a free text mentions, and the words about it. */
const anestheticIn = (text: string, known: Amounts, tables: Tables): readonly [number, number] | undefined =>
  amountIn(text, amount, known, tables) ??
  amountIn(text, slippedAmount, known, tables) ??
  amountIn(text, bareAmount, known, tables);

/** The same, of amounts that are written in one way. */
function amountIn(
  text: string,
  written: RegExp,
  known: Amounts,
  tables: Tables,
): readonly [number, number] | undefined {
  for (const match of text.matchAll(written)) {
    const [from, to] = [match.index, match.index + match[0].length];
    const [start, end] = sentenceAt(text, from, to);
    const sentence = text.slice(start, end);
    const comma = text.indexOf(',', to);
    const near = text.slice(text.lastIndexOf(',', from) + 1, comma < 0 ? end : Math.min(comma, end));
    if (other.test(text.slice(to)) || notGiven.test(near)) continue;
    // A unit that may be another is believed only beside the name of an anesthetic.
    const unit = match[2]!;
    const after = text.slice(to, to + 30);
    const isOne =
      written === slippedAmount
        ? isMilliliters(unit) &&
          isNamed(moreOf.test(after) ? sentence : otherUnits.test(unit) ? '' : near, tables)
        : isAnesthetic(sentence, near, /^g/i.test(unit), tables);
    if (!isOne) continue;
    const typed = match[1]!.toLowerCase();
    const told = numbers.includes(typed) ? numbers.indexOf(typed) + 1 : Number(typed);
    if (!isEntered(told, sentence, known)) return [start, end];
  }
  return undefined;
}

/** How their names end, also one that is in no table or misspelled. */
const endsAsCaine = /[a-z]caines?\b/i;

const isNamed = (text: string, { agents }: Tables): boolean =>
  endsAsCaine.test(text) ||
  phrasesOf(agents)
    .mentionsIn(asMeant(text, agents))
    .some(({ row }) => row.class !== 'none');

function isAnesthetic(sentence: string, near: string, isGrams: boolean, tables: Tables): boolean {
  if (!isGrams)
    return isNamed(sentence, tables) || unnamed.test(near) || (dose.test(near) && !solutions.test(near));
  const named = phrasesOf(tables.agents).mentionsIn(asMeant(sentence, tables.agents));
  return named.length > 0 && /\b(?:cream|gel|ointment|topical)\b/i.test(sentence);
}

/** The words of a sentence that the reader of dictated lines takes for an injection; undefined where it does not. */
function wordsOf(sentence: string): string | undefined {
  const { fields } = readInjectionLine(sentence);
  if (!fields.some(({ key }) => key === 'agent') || !fields.some(({ key }) => key === 'volume'))
    return undefined;
  const from = Math.min(...fields.map((field) => field.from));
  const words = sentence.slice(from, Math.max(...fields.map((field) => field.to)));
  return words.replace(onTop, '$1');
}

function outside({ note, tables, source }: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const { leaf, later, ...place } of textsOf(note)) {
    const text = leaf.value;
    if (text === undefined || !worthALook.test(text)) continue;
    const entries = later ? (place.entries ?? []) : entriesOf(note);
    const known = amountsOf(entries, later === true || entries.length > 1);
    const told = anestheticIn(text, known, tables);
    if (told === undefined) continue;
    const [from, to] = told;
    const sentence = text.slice(from, to);
    const lead = sentence.length - sentence.trimStart().length;
    const words = wordsOf(sentence);
    const data = words === undefined ? undefined : beginEntry(source.text, place, words);
    found.push({
      at: within(leaf.node, from + lead, from + sentence.trimEnd().length),
      args: { text: sentence.trim() },
      ...(data === undefined ? {} : { data }),
    });
  }
  return [...found, ...injectedIn(note, tables)];
}

/**
 * Local anesthetics under `injected`, which is for other drugs: as the drug, or mixed into it without an entry of their
 * own in the same part.
 */
const injectedIn = (
  { procedures = [], events = [], anesthetic: ofVisit = [] }: Note,
  tables: Tables,
): readonly Report[] =>
  [...procedures, ...events].flatMap(({ injected = [], anesthetic = [] }) => {
    const entered = [...ofVisit, ...anesthetic].flatMap((one) => rowsIn(tables.agents, one.agent));
    return injected.flatMap(({ drug }) => {
      if (drug?.value === undefined) return [];
      const agents = anestheticsIn(drug.value, tables);
      const isMixed = drugIn(drug.value, tables) !== undefined;
      const isEntered = agents.length === 0 || (isMixed && agents.every((row) => entered.includes(row)));
      return isEntered ? [] : [{ at: drug, form: 'injected', args: { text: drug.text } }];
    });
  });

const anestheticsIn = (text: string, { agents }: Tables): readonly AgentRow[] =>
  phrasesOf(agents)
    .mentionsIn(asMeant(text, agents))
    .filter(({ row, standing }) => row.class !== 'none' && standing === 'asserted')
    .map(({ row }) => row);

export const check: Check = {
  code: 'dose/outside-entry',
  severity: 'error',
  title: 'A local anesthetic outside of the entries',
  why: 'Only what is under `anesthetic` is added up. An injection in free text, or under `injected`, is missing from the total, and the dose looks lower than it was. Amounts that an entry already has are skipped, unless the words say that they were given in addition.',
  sources: [format],
  messages: {
    main: '`{text}` is a local anesthetic in free text, so it is not in the total dose. Write it under `anesthetic` too.',
    injected:
      '`{text}` is a local anesthetic, and under `injected` it is not in the total dose. Write it under `anesthetic`.',
  },
  find: outside,
  fix: (_, { data }) =>
    data === undefined
      ? []
      : [
          {
            title: 'correct the record: begin an entry with these words',
            kind: 'record',
            sure: false,
            edits: data as readonly TextEdit[],
          },
        ],
};
