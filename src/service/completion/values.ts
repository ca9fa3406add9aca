import { allergiesIn } from '../../checks/allergies.ts';
import { conflictOf, type Product } from '../../checks/allergy/products.ts';
import { checkOf } from '../../checks/index.ts';
import { agentOf } from '../../dose/injections.ts';
import { epinephrineText, strengthText } from '../../dose/words.ts';
import { addDays, daysBetween } from '../../note/values/days.ts';
import { sutureRemoval } from '../../followup/sutures.ts';
import { isClosed } from '../../followup/working-days.ts';
import { formatNumber } from '../../note/values/format.ts';
import type { KeyShape } from '../../note/tree/shape.ts';
import { readSite } from '../../note/words/site.ts';
import type { StockProduct } from '../../practice/tables.ts';
import type { AgentRow } from '../../reference/agents.ts';
import type { WordRow } from '../../reference/types.ts';
import { isAcceptable } from '../code-actions/accept.ts';
import { spelled } from './british.ts';
import type { Cursor } from './cursor.ts';
import { weekdayName } from '../analysis/days.ts';
import type { Known } from './known.ts';
import { practiceOffers } from './practice-values.ts';
import { rowsOfTable } from '../analysis/words.ts';
import type { Writing } from './writing.ts';

/** A value that can be typed. */
export interface Offered {
  readonly text: string;
  readonly detail?: string | undefined;
  /** Set where something is still to be typed before it: how many characters before its end. */
  readonly caretBack?: number;
  readonly synonyms?: readonly string[];
  /** Set for a key with its colon, which is without quotes. */
  readonly row?: true;
  /** Set where more is mostly typed after it, as the time after a day. */
  readonly more?: true;
}

export interface Asked extends Writing {
  readonly key: KeyShape;
  readonly cursor: Cursor;
  readonly known: Known;
}

type Offer = (asked: Asked) => readonly Offered[];

/** The values that fit a key here, the likeliest first. */
export function valuesFor(asked: Asked): readonly Offered[] {
  const { path } = asked.cursor;
  const byPath: ReadonlyMap<string, Offer> = asked.root === 'note' ? inNote : practiceOffers;
  const offer =
    byPath.get(path.slice(-2).join('.')) ??
    byPath.get(path.at(-1) ?? '') ??
    byReader.get(asked.key.reads ?? '');
  return offer?.(asked) ?? [];
}

const fixed =
  (...texts: readonly string[]): Offer =>
  () =>
    texts.map((text) => ({ text }));

/** Units after the number that is typed already: the number itself is never proposed. */
const units =
  (...names: readonly string[]): Offer =>
  ({ cursor }) => {
    const number = /^\d+(?:\.\d+)?/.exec(cursor.typed)?.[0];
    return number === undefined ? [] : names.map((unit) => ({ text: `${number}${unit}` }));
  };

/**
 * The unit after the number that is typed, or yet to be typed, with what the method usually takes as help beside it; no
 * number is proposed.
 */
function volumes(asked: Asked): readonly Offered[] {
  const { known, tables } = asked;
  const offered = units(' mL')(asked);
  const method = known.procedure?.method?.value;
  const row = method === undefined ? undefined : tables.methods.find(method);
  if (row?.usualMl === undefined) return offered;
  const [from, to] = row.usualMl;
  const detail = `${row.name}: ${formatNumber(from)} to ${formatNumber(to)} mL is usual (common practice, no source)`;
  return offered.length === 0
    ? [{ text: ' mL', detail, caretBack: ' mL'.length }]
    : offered.map((one) => ({ ...one, detail }));
}

/** Today and the day of the visit, which are known; no other day is. */
function dates({ key, today, known }: Asked): readonly Offered[] {
  const day = (text: string, what: string): Offered => ({
    text,
    detail: `${what}, ${weekdayName(text)}`,
    ...(key.reads === 'moment' ? { more: true } : {}),
  });
  const visit = key.key === 'visit' ? undefined : known.visit;
  const days = [day(today, 'today')];
  return visit === undefined || visit === today ? days : [...days, day(visit, 'day of the visit')];
}

function words({ key, tables }: Asked): readonly Offered[] {
  const rows = rowsOfTable(tables, key.words);
  const accepted = new Set(rows.flatMap(({ name, synonyms }) => [name, ...synonyms]));
  return rows.map(({ name, synonyms }) => ({
    text: spelled(name, tables.practice.spelling, (word) => accepted.has(word)),
    synonyms: [name, ...synonyms],
  }));
}

/** Words for things that touch the patient: what holds an allergen of this patient is left out. */
function products(asked: Asked): readonly Offered[] {
  const { known, tables, key } = asked;
  const note = known.note;
  const offered = words(asked);
  if (note?.patient?.allergies === undefined) return offered;
  const allergies = allergiesIn(note, tables);
  if (!allergies.any) return offered;
  const rows: readonly (Product & WordRow)[] = rowsOfTable(tables, key.words);
  return offered.flatMap((one, at) => {
    const conflict = conflictOf(rows[at]!, allergies);
    if (conflict === undefined) return [one];
    return conflict.form === 'may' ? [{ ...one, detail: `may contain ${conflict.substance}` }] : [];
  });
}

/** Dressings, those last that do not hold on the site. */
function dressings(asked: Asked): readonly Offered[] {
  const offered = products(asked);
  const site = asked.known.procedure?.site?.value;
  const base = site === undefined ? undefined : readSite(site, asked.tables.sites)?.base;
  if (base === undefined || base.dressable === 'yes') return offered;
  const loose = ({ text }: Offered): boolean => asked.tables.dressings.find(text)?.adhesive === true;
  return [
    ...offered.filter((one) => !loose(one)),
    ...offered.filter(loose).map((one) => ({ ...one, detail: 'holds badly on this site' })),
  ];
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

/** The agent of the injection, or of the product in stock, in which a value is typed. */
function agentHere({ root, known, tables }: Asked): AgentRow | undefined {
  if (root !== 'note') return tables.agents.find(known.product?.agent?.value ?? '');
  const { injection } = known;
  return injection && agentOf(injection, tables);
}

/** The strengths in which the agent of the same injection or product is made; after a number that is typed its units. */
function strengths(asked: Asked): readonly Offered[] {
  if (/^\d/.test(asked.cursor.typed)) return units('%', ' mg/mL')(asked);
  const agent = agentHere(asked);
  return (agent?.strengths ?? []).map((strength) => ({
    text: strengthText(strength),
    detail: `${agent?.name ?? ''} is made so`,
  }));
}

/** What a product of the stock holds. */
export const holding = ({ agent, mgPerMl, epinephrineMicrogramsPerMl: epinephrine }: StockProduct): string =>
  [
    agent.name,
    ...(mgPerMl === undefined ? [] : [strengthText(mgPerMl)]),
    ...(epinephrine > 0 ? [`epinephrine ${epinephrineText(epinephrine)}`] : []),
  ].join(' ');

const stock: Offer = ({ tables }) =>
  [...tables.stock.values()].map((one) => ({
    text: one.name,
    detail: holding(one),
    synonyms: [one.agent.name],
  }));

const mostDays = 30;

/** The working days of the window in which the stitches of this procedure come out. */
function sutureDays({ known, tables }: Asked): readonly Offered[] {
  const { note, procedure } = known;
  if (note === null || procedure === undefined) return [];
  const site = procedure.site?.value;
  const reading = site === undefined ? undefined : readSite(site, tables.sites);
  const window = sutureRemoval(note, procedure, reading, tables);
  if (window.kind !== 'window') return [];
  const length = Math.min(daysBetween(window.from, window.to), mostDays);
  return Array.from({ length: length + 1 }, (_, day) => addDays(window.from, day))
    .filter((day) => !isClosed(day, tables.closedDays))
    .map((day) => ({
      text: day,
      detail: `${weekdayName(day)}, ${daysBetween(known.visit ?? day, day)} days after the visit`,
    }));
}

/** Codes of what is open in this note and can be accepted. */
function openCodes({ known }: Asked): readonly Offered[] {
  const open = known.judgement.findings.filter(isAcceptable);
  return [...new Set(open.map(({ code }) => code))].map((code) => ({
    text: code,
    detail: checkOf(code)?.title,
  }));
}

const labels: Offer = ({ known }) =>
  (known.note?.procedures ?? []).flatMap(({ specimen = [], site }) =>
    specimen.flatMap(({ label }) =>
      label?.value === undefined ? [] : [{ text: label.value, detail: site?.text }],
    ),
  );

/** Who is named in the note. */
const people: Offer = ({ known }) =>
  (['clinician', 'scribe', 'assistant'] as const).flatMap((role) => {
    const name = known.note?.[role]?.value;
    return name === undefined ? [] : [{ text: name, detail: role }];
  });

const named = (rows: readonly WordRow[]): readonly Offered[] =>
  rows.map(({ name, synonyms }) => ({ text: name, synonyms }));

const allergens: Offer = ({ tables }) => {
  const answers = tables.allergens.rows.filter(({ kind }) => kind === 'none' || kind === 'unknown');
  const things = tables.allergens.rows.filter(({ kind }) => kind === 'substance' || kind === 'class');
  return named([...answers, ...things]);
};

/** Drugs that are injected; what is an allergen of this patient is left out. */
const injectedDrugs: Offer = ({ known: { note }, tables }) => {
  const allergies = note === null ? undefined : allergiesIn(note, tables);
  const rows = tables.injectedDrugs.rows.filter(
    (row) => allergies?.any !== true || conflictOf(row, allergies)?.form !== 'itself',
  );
  return named(rows);
};

/** The unit after the number that is typed. */
const injectedStrengths = units(' mg/mL', ' units/mL');

const implants: Offer = ({ tables }) => named(tables.implants.rows);

/** Where the path says more than the reader; the last two keys, or the last one. */
const inNote: ReadonlyMap<string, Offer> = new Map<string, Offer>([
  ['accepted.check', openCodes],
  ['accepted.by', people],
  ['born', () => []],
  ['aftercare.given', fixed('spoken', 'printed', 'email')],
  ['aftercare.language', fixed('en', 'es')],
  ['aftercare.helper', fixed('none')],
  ['allergies.to', allergens],
  ['allergies', allergens],
  ['closure', ({ tables }) => named(tables.closures.rows)],
  ['complications', fixed('none')],
  ['conditions', fixed('none')],
  ['dressing', dressings],
  ['events.procedure', labels],
  ['hemostasis', products],
  ['implants.kind', implants],
  ['implants', implants],
  ['injected', injectedDrugs],
  ['injected.concentration', injectedStrengths],
  ['injected.drug', injectedDrugs],
  ['material', products],
  ['medications', ({ tables }) => [{ text: 'none' }, ...named(tables.bloodThinners.rows)]],
  ['orientation', fixed("suture at 12 o'clock", "ink at 12 o'clock", 'not oriented')],
  ['preparation', products],
  ['product', stock],
  ['same-as', labels],
  ['sutures-due', sutureDays],
  ['sutures-out', dates],
  ['sutures-out.by', people],
  ['time-out', fixed('done')],
  ['told', dates],
  ['told.by', people],
  ['told.how', fixed('telephone', 'visit', 'letter', 'portal message', 'voicemail')],
  ['wheal', fixed('1')],
]);

const byReader: ReadonlyMap<string, Offer> = new Map<string, Offer>([
  ['yesno', fixed('yes', 'no')],
  ['mass', (asked: Asked) => units(...(asked.key.key === 'amount' ? [' g'] : [' kg', ' lb']))(asked)],
  ['volume', volumes],
  ['length', units(' mm', ' cm')],
  ['dimensions', units(' mm', ' cm')],
  ['area', units(' cm2')],
  ['age', units(' years', ' months', ' weeks', ' days')],
  ['concentration', strengths],
  ['dilution', fixed('1:100,000', '1:200,000', 'none')],
  ['mixture', fixed('9:1', 'no')],
  ['sutureSize', fixed('6-0', '5-0', '4-0', '3-0')],
  ['weighed', fixed('measured', 'stated', 'chart', 'estimated')],
  ['date', dates],
  ['moment', dates],
  ['word', words],
  ['site', sites],
]);
