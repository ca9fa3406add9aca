import type { WordTable } from '../note/words/word-table.ts';
import type { AuthorityRow } from '../reference/authorities.ts';
import type { LimitRow, Population } from '../reference/limits.ts';

/** What a limit goes by. Unknown facts are undefined. */
export interface Facts {
  readonly kg: number | undefined;
  readonly months: number | undefined;
}

/** The age that is taken where none is known. */
export const adultMonths = 18 * 12;

export const monthsOrAdult = ({ months }: Facts): number => months ?? adultMonths;

/** Limits, and whose are the ceiling. */
export interface LimitBook {
  readonly limits: readonly LimitRow[];
  readonly authorities: WordTable<AuthorityRow>;
  readonly authority: string;
}

/** Rows of one rank, with the practice's stricter ones that are beside them. */
interface Rung {
  readonly rows: readonly LimitRow[];
  readonly stricter: readonly LimitRow[];
}

/** The rows of one agent with or without epinephrine, sorted by what they are used for. */
interface KindRules {
  /** Where to look for the ceiling, in this order: the first rung that has a row for the patient counts. */
  readonly ladder: readonly Rung[];
  /** Guidelines of the authority's country, and what is less surely known of the authority itself. */
  readonly advisories: readonly LimitRow[];
  /** Every other published limit. */
  readonly others: readonly LimitRow[];
}

export interface Rules {
  readonly authority: string;
  readonly of: (agent: string, epinephrine: boolean) => KindRules;
}

const none: KindRules = { ladder: [], advisories: [], others: [] };

/** Sorts limits by what they are used for. */
export function rulesFrom(book: LimitBook): Rules {
  const authority = book.authorities.find(book.authority)?.name ?? book.authority;
  const sorted = new Map<string, KindRules>();
  for (const agent of new Set(book.limits.map((row) => row.agent))) {
    const [plain, both] = [false, true].map((epinephrine) =>
      sort(
        book.limits.filter((row) => row.agent === agent && row.epinephrine === epinephrine),
        authority,
        book,
      ),
    ) as [Sorted, Sorted];
    const strict = [...both.stricter, ...plain.stricter];
    sorted.set(keyOf(agent, false), {
      ...plain,
      ladder: [
        ...rungs([plain.approved, plain.own, plain.published], plain.stricter),
        ...rungs([plain.stricter], []),
      ],
    });
    sorted.set(keyOf(agent, true), {
      ...both,
      // Without a row of its own, the plain limit of the authority serves with epinephrine too.
      ladder: [
        ...rungs([both.approved, both.own], both.stricter),
        ...rungs([plain.approved, plain.own], strict),
        ...rungs([[...both.published, ...unchanged(plain.published, both.published, book)]], both.stricter),
        ...rungs([plain.published, strict], strict),
      ],
    });
  }
  return { authority, of: (agent, epinephrine) => sorted.get(keyOf(agent, epinephrine)) ?? none };
}

/** The plain rows of reference tables that list no other value with epinephrine: there it allows no more. */
function unchanged(
  plain: readonly LimitRow[],
  both: readonly LimitRow[],
  { authorities }: LimitBook,
): readonly LimitRow[] {
  const changed = new Set(both.map(({ authority }) => authority));
  return plain.filter(
    ({ authority }) => !changed.has(authority) && authorities.find(authority)?.kind === 'table',
  );
}

interface Sorted extends Omit<KindRules, 'ladder'> {
  /** The practice's own, in the place of the authority's. */
  readonly approved: readonly LimitRow[];
  /** The practice's own, beside the authority's. */
  readonly stricter: readonly LimitRow[];
  /** Read in the text of the practice's authority. */
  readonly own: readonly LimitRow[];
  /** Of every label, formulary and reference table, for where the authority has none. */
  readonly published: readonly LimitRow[];
}

function sort(rows: readonly LimitRow[], authority: string, { authorities }: LimitBook): Sorted {
  const country = authorities.find(authority)?.country;
  const published = rows.filter((row) => row.practice === undefined);
  const isOwn = (row: LimitRow): boolean =>
    row.authority === authority || row.ceilingFor?.includes(authority) === true;
  const sure = (row: LimitRow): boolean => row.mark === 'Q' && row.notRecommended !== true;
  const judges = (row: LimitRow): boolean =>
    /^(label|formulary|table)$/.test(authorities.find(row.authority)?.kind ?? '');
  const advises = (row: LimitRow): boolean => {
    const from = authorities.find(row.authority);
    return (from?.kind === 'guideline' && from.country === country) || (isOwn(row) && !sure(row));
  };
  return {
    approved: rows.filter((row) => row.practice === 'approved'),
    stricter: rows.filter((row) => row.practice === 'stricter'),
    own: published.filter((row) => isOwn(row) && sure(row)),
    published: published.filter((row) => judges(row) && sure(row)),
    advisories: published.filter(advises),
    others: published.filter((row) => !isOwn(row) && !advises(row) && sure(row)),
  };
}

const rungs = (ranks: readonly (readonly LimitRow[])[], stricter: readonly LimitRow[]): readonly Rung[] =>
  ranks.flatMap((rows) => (rows.length === 0 ? [] : [{ rows, stricter }]));

const keyOf = (agent: string, epinephrine: boolean): string => (epinephrine ? `${agent}+` : agent);

/** A limit as it means one patient. */
export interface Ceiling {
  readonly limit: LimitRow;
  /** Without a weight the cap alone, Infinity where the row has none. */
  readonly limitMg: number;
  readonly boundBy: 'weight' | 'cap';
}

/** Whether a row is for a patient; without a weight its bounds by weight are left aside. */
export function appliesTo(population: Population, facts: Facts): boolean {
  const { fromMonths, belowMonths, fromKg, aboveKg, belowKg } = population;
  const months = monthsOrAdult(facts);
  const { kg } = facts;
  if (months < (fromMonths ?? 0) || months >= (belowMonths ?? Infinity)) return false;
  if (kg === undefined) return true;
  return kg >= (fromKg ?? 0) && kg > (aboveKg ?? -1) && kg < (belowKg ?? Infinity);
}

const byWeight = ({ mgPerKg }: LimitRow, kg: number | undefined): number =>
  mgPerKg === undefined || kg === undefined ? Infinity : mgPerKg * kg;

/** How much a row allows at a weight, in mg; Infinity where it has nothing to go by. */
export const limitAt = (limit: LimitRow, kg: number | undefined): number =>
  Math.min(byWeight(limit, kg), limit.capMg ?? Infinity);

/** What a row allows at a weight. */
export function ceilingBy(limit: LimitRow, kg: number | undefined): Ceiling {
  const limitMg = limitAt(limit, kg);
  const boundBy = limitMg !== Infinity && limitMg === byWeight(limit, kg) ? 'weight' : 'cap';
  return { limit, limitMg, boundBy };
}

/**
 * The ceiling for a patient: the lowest of the authority's rows; where it has none, its plain limit serves with
 * epinephrine too, and after that the lowest that any label, formulary or table publishes. The young have no more than
 * an adult of their weight would have, unless the practice has approved it.
 * @returns undefined where nothing is published for such a patient
 */
export function ceilingOf(
  rules: Rules,
  agent: string,
  epinephrine: boolean,
  facts: Facts,
): Ceiling | undefined {
  const own = firstRung(rules, agent, epinephrine, facts);
  if (own === undefined || monthsOrAdult(facts) >= adultMonths || own.limit.practice === 'approved')
    return own;
  const adult = firstRung(rules, agent, epinephrine, { ...facts, months: adultMonths });
  return adult !== undefined && isLower(adult.limit, own.limit, facts.kg) ? adult : own;
}

function firstRung(rules: Rules, agent: string, epinephrine: boolean, facts: Facts): Ceiling | undefined {
  for (const { rows, stricter } of rules.of(agent, epinephrine).ladder) {
    const lowest = lowestOf(rows, facts);
    if (lowest === undefined) continue;
    const own = lowestOf(stricter, facts);
    return own !== undefined && isLower(own.limit, lowest.limit, facts.kg) ? own : lowest;
  }
  return undefined;
}

function lowestOf(rows: readonly LimitRow[], facts: Facts): Ceiling | undefined {
  let lowest: LimitRow | undefined;
  for (const row of rows)
    if (appliesTo(row.population, facts) && (lowest === undefined || isLower(row, lowest, facts.kg)))
      lowest = row;
  return lowest && ceilingBy(lowest, facts.kg);
}

/** Whether a row allows less than another at a weight; without one, and without caps, whether it would. */
function isLower(row: LimitRow, other: LimitRow, kg: number | undefined): boolean {
  const [mg, otherMg] = [limitAt(row, kg), limitAt(other, kg)];
  return mg === otherMg
    ? mg === Infinity && (row.mgPerKg ?? Infinity) < (other.mgPerKg ?? Infinity)
    : mg < otherMg;
}

/** Both figures of a limit; undefined where there is none. */
export interface Figures {
  readonly mgPerKg?: number | undefined;
  readonly capMg?: number | undefined;
}

/** Both figures of what is published, and by whom. */
export interface Published extends Figures {
  readonly authority: string;
}

/** The lowest figures that bind an adult whose weight is not known: those of the first rung that has any for adults. */
export function adultFigures(rules: Rules, agent: string, epinephrine: boolean): Published {
  const adult = { kg: undefined, months: adultMonths };
  const rung = rules
    .of(agent, epinephrine)
    .ladder.map(({ rows }) => rows.filter(({ population }) => appliesTo(population, adult)))
    .find(({ length }) => length > 0);
  const lowest = (values: readonly (number | undefined)[]): number | undefined => {
    const known = values.filter((value) => value !== undefined);
    return known.length === 0 ? undefined : Math.min(...known);
  };
  return {
    authority: [...new Set((rung ?? []).map(({ authority }) => authority))].join(' and '),
    mgPerKg: lowest((rung ?? []).map(({ mgPerKg }) => mgPerKg)),
    capMg: lowest((rung ?? []).map(({ capMg }) => capMg)),
  };
}
