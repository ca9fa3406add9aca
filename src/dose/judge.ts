import type { Event, Injection, Note } from '../note/generated/types.ts';
import type { IsoDate } from '../note/values/values.ts';
import type { StockProduct, Tables } from '../practice/tables.ts';
import { ceilTo, isOver } from './arithmetic.ts';
import { creamDoses, creamGap, type CreamDose } from './creams.ts';
import type { Elsewhere, OthersOn } from './types.ts';
import {
  isNothing,
  itemOf,
  lockedBy,
  shareOf,
  type Applied,
  type Given,
  type Unlimited,
  type Unread,
} from './injections.ts';
import { leftOf } from './left.ts';
import { ceilingOf, type Facts, type Rules } from '../limits/ceilings.ts';
import { factsOn, needsAge } from './patient.ts';
import { advisoryCeilings, rulesOf } from './rules.ts';
import { stepsOf } from './steps.ts';
import type { Advisory, AgentDose, DoseJudgement, KindSum, Left, NoLimit, Step } from './types.ts';
import { kindText, productText } from './words.ts';

export type { Given } from './injections.ts';
export type { CreamDose } from './creams.ts';
export type * from './types.ts';

/**
 * Judges the anesthetic of a whole visit, and of the later days on which its events mention more.
 * @param elsewhere what other notes of the patient say of a day; absent where nobody looked
 * @param hidden why part of what was typed could not be counted, where that is so: then the sum is a lower bound
 */
export function judgeDose(
  note: Note,
  tables: Tables,
  elsewhere: Elsewhere = () => undefined,
  hidden?: string,
): DoseJudgement {
  const day = note.visit?.value?.date;
  const injections: Injection[] = [];
  addGiven(note.anesthetic, injections);
  for (const procedure of note.procedures ?? []) addGiven(procedure.anesthetic, injections);
  const later = addEvents(note.events, day, injections);
  return new Judged(
    injections,
    day,
    factsOn(note, day),
    tables,
    later.map(([on, given]) => new Judged(given, on, factsOn(note, on), tables, [], elsewhere(on), hidden)),
    day === undefined ? undefined : elsewhere(day),
    hidden,
  );
}

function addGiven(from: readonly Injection[] | undefined, injections: Injection[]): void {
  if (from !== undefined) for (const one of from) if (!isNothing(one)) injections.push(one);
}

type DayOfEvents = readonly [IsoDate, readonly Injection[]];

/** Adds what was given on the day of the visit to `injections`, and answers the rest by its day. */
function addEvents(
  events: readonly Event[] | undefined,
  visit: IsoDate | undefined,
  injections: Injection[],
): readonly DayOfEvents[] {
  if (events === undefined) return [];
  const byDay = new Map<IsoDate, Injection[]>();
  for (const event of events) {
    if (event.anesthetic === undefined || event.anesthetic.length === 0) continue;
    const on = dayOf(event, visit);
    if (on === visit || on === undefined) injections.push(...event.anesthetic);
    else byDay.set(on, [...(byDay.get(on) ?? []), ...event.anesthetic]);
  }
  return [...byDay];
}

/** An event whose day can't be read counts with the visit. */
const dayOf = (event: Event, visit: IsoDate | undefined): IsoDate | undefined =>
  event.on?.value?.date ?? visit;

/** A dose that nothing can be said about. */
export function unjudged(why: string): DoseJudgement {
  return {
    judged: false,
    fraction: null,
    why,
    epinephrineMicrograms: 0,
    agents: [],
    left: [],
    advisories: [],
    steps: [{ text: why }],
    day: undefined,
    facts: { kg: undefined, months: undefined },
    injections: [],
    atLeast: 0,
    given: [],
    unread: [],
    unlimited: [],
    noLimit: [],
    creams: [],
    elsewhere: [],
    neededKg: undefined,
    others: undefined,
    later: [],
  };
}

/** Whether the dose is over the limit for sure, judged in full or not. */
export const overLimit = (dose: DoseJudgement): boolean => isOver(dose.atLeast, 1);

interface Group {
  readonly agent: string;
  readonly epinephrine: boolean;
  mg: number;
  readonly given: Given[];
}

type Product = Pick<Given, 'agent' | 'withEpinephrine' | 'mgPerMl'>;

/** A product of the stock as it would be injected today; undefined where it has no strength or no limit. */
function inStock(
  { agent, mgPerMl, epinephrineMicrogramsPerMl: drawn, buffered }: StockProduct,
  tables: Tables,
): Product | undefined {
  if (mgPerMl === undefined || !agent.limited || agent.form !== 'injected') return undefined;
  const withEpinephrine = drawn > 0 && lockedBy(drawn, buffered, undefined, undefined, tables) === undefined;
  return { agent, withEpinephrine, mgPerMl: mgPerMl * shareOf(buffered) };
}

const alone: Pick<OthersOn, 'sums' | 'epinephrineMicrograms'> = { sums: [], epinephrineMicrograms: 0 };

class Judged implements DoseJudgement {
  readonly given: Given[] = [];
  readonly unread: Unread[] = [];
  readonly unlimited: Unlimited[] = [];
  readonly noLimit: NoLimit[] = [];
  readonly agents: AgentDose[] = [];
  readonly creams: readonly CreamDose[];
  readonly epinephrineMicrograms: number;
  readonly atLeast: number;
  readonly why: string | undefined;
  private readonly groups: readonly Group[];
  private readonly rules: Rules;
  private shown: readonly Step[] | undefined;
  private passed: readonly Advisory[] | undefined;

  constructor(
    readonly injections: readonly Injection[],
    readonly day: IsoDate | undefined,
    readonly facts: Facts,
    private readonly tables: Tables,
    readonly later: readonly DoseJudgement[],
    readonly others: OthersOn | undefined,
    private readonly hidden: string | undefined,
  ) {
    this.rules = rulesOf(tables);
    const applied: Applied[] = [];
    let micrograms = 0;
    for (const injection of injections) {
      const item = itemOf(injection, day, tables);
      if (item.kind === 'given') this.given.push(item.given);
      else if (item.kind === 'applied') applied.push(item.applied);
      else if (item.kind === 'unlimited') this.unlimited.push(item.unlimited);
      else {
        this.unread.push(item.unread);
        if (item.unread.atLeast !== undefined) this.given.push(item.unread.atLeast);
      }
    }
    const elsewhere = others ?? alone;
    for (const one of this.given) micrograms += one.epinephrineMicrograms;
    this.epinephrineMicrograms = micrograms + elsewhere.epinephrineMicrograms;
    this.groups = grouped(this.given, elsewhere.sums);
    this.creams = applied.length === 0 ? [] : creamDoses(applied, facts, tables);
    for (const group of this.groups) this.judge(group);
    this.atLeast = sumOf(this.agents);
    this.why = this.reason();
  }

  get judged(): boolean {
    return this.why === undefined;
  }

  get fraction(): number | null {
    return this.judged ? this.atLeast : null;
  }

  get advisories(): readonly Advisory[] {
    return (this.passed ??= this.passedBy('advisories'));
  }

  get elsewhere(): readonly Advisory[] {
    return this.passedBy('others').sort((a, b) => a.maxMg - b.maxMg);
  }

  get steps(): readonly Step[] {
    return (this.shown ??= stepsOf(this, this.tables));
  }

  get left(): readonly Left[] {
    const { facts } = this;
    if (!this.judged || facts.kg === undefined || needsAge(facts)) return [];
    const products = new Map<string, Product>();
    for (const one of this.given) products.set(productText(one), one);
    for (const one of this.tables.stock.values()) {
      const product = inStock(one, this.tables);
      if (product !== undefined && !products.has(one.name)) products.set(one.name, product);
    }
    return [...products].flatMap(([product, { agent, withEpinephrine, mgPerMl }]) => {
      const ceiling = ceilingOf(this.rules, agent.name, withEpinephrine, facts);
      return ceiling === undefined ? [] : [leftOf(product, mgPerMl, ceiling.limitMg, this.atLeast)];
    });
  }

  get neededKg(): number | undefined {
    if (this.facts.kg !== undefined || this.groups.length === 0 || this.noLimit.length > 0) return undefined;
    const over = (kg: number): boolean => isOver(fractionAt(kg, this.groups, this.facts, this.rules), 1);
    let [low, high] = [0, 400];
    if (over(high)) return undefined;
    while (high - low > 1e-4) {
      const middle = (low + high) / 2;
      if (over(middle)) low = middle;
      else high = middle;
    }
    const kg = ceilTo(high - 1e-4, 0.1);
    return over(kg) ? ceilTo(high + 0.05, 0.1) : kg;
  }

  private judge({ agent, epinephrine, mg, given }: Group): void {
    const ceiling = ceilingOf(this.rules, agent, epinephrine, this.facts);
    if (ceiling === undefined) {
      this.noLimit.push({ agent, epinephrine, given });
      return;
    }
    const { kg } = this.facts;
    this.agents.push({
      agent,
      epinephrine,
      mg,
      mgPerKg: kg === undefined ? null : mg / kg,
      limitMg: ceiling.limitMg,
      boundBy: ceiling.boundBy,
      fraction: mg / ceiling.limitMg,
      limit: ceiling.limit,
      given,
    });
  }

  private reason(): string | undefined {
    const [unread] = this.unread;
    if (unread !== undefined) return reasonOf(unread);
    if (this.hidden !== undefined) return this.hidden;
    const [unlimited] = this.noLimit;
    if (unlimited !== undefined)
      return `no limit is known for ${kindText(unlimited.agent, unlimited.epinephrine)} in such a patient`;
    if (this.others?.unjudged === true)
      return 'another note of this patient on that day has an anesthetic that cannot be counted';
    if (this.groups.length === 0) return creamsBecause(this.creams);
    if (this.tables.gap !== undefined) return this.tables.gap.why;
    if (this.facts.kg === undefined) return 'no weight';
    return needsAge(this.facts) ? 'no age, and a weight under 50 kg' : undefined;
  }

  private passedBy(list: 'advisories' | 'others'): Advisory[] {
    const { facts, tables } = this;
    const passed: Advisory[] = [];
    if (facts.kg === undefined) return passed;
    for (const dose of this.agents) {
      const { mg, given } = dose;
      for (const { limit, limitMg } of advisoryCeilings(this.rules, dose, facts, list, tables, mg))
        if (isOver(mg, limitMg) && isOver(dose.limitMg, limitMg))
          passed.push({ limit, maxMg: limitMg, mg, given });
    }
    return passed;
  }
}

/** Why creams are not judged; said of the dose where there is nothing else in it. */
function creamsBecause(creams: readonly CreamDose[]): string | undefined {
  const cream = creams.find((one) => creamGap(one) !== undefined);
  if (cream === undefined) return undefined;
  return creamGap(cream) === 'area'
    ? `the maximum of ${cream.agent.name} is an area, and none is written`
    : `no maximum of ${cream.agent.name} is known for such a patient`;
}

function fractionAt(kg: number, groups: readonly Group[], facts: Facts, rules: Rules): number {
  return groups.reduce((sum, { agent, epinephrine, mg }) => {
    const ceiling = ceilingOf(rules, agent, epinephrine, { ...facts, kg });
    return sum + mg / (ceiling?.limitMg ?? Infinity);
  }, 0);
}

/** The share of the limit that the counted injections would have at another weight. */
export function fractionAtWeight(dose: DoseJudgement, kg: number, tables: Tables): number {
  return fractionAt(kg, grouped(dose.given, dose.others?.sums ?? []), dose.facts, rulesOf(tables));
}

/** What was given by agent; what other notes say adds to the amounts, and is not listed. */
function grouped(given: readonly Given[], elsewhere: readonly KindSum[]): readonly Group[] {
  const groups: Group[] = [];
  const groupOf = (agent: string, epinephrine: boolean): Group => {
    const known = groups.find((one) => one.agent === agent && one.epinephrine === epinephrine);
    if (known !== undefined) return known;
    const group: Group = { agent, epinephrine, mg: 0, given: [] };
    groups.push(group);
    return group;
  };
  for (const one of given) {
    const group = groupOf(one.agent.name, one.withEpinephrine);
    group.mg += one.mg;
    group.given.push(one);
  }
  for (const { agent, epinephrine, mg } of elsewhere) groupOf(agent, epinephrine).mg += mg;
  return groups;
}

const sumOf = (agents: readonly AgentDose[]): number =>
  agents.reduce((sum, { fraction }) => sum + fraction, 0);

function reasonOf({ what, why, text }: Unread): string {
  if (why === 'missing') return `an injection has no ${what}`;
  if (why === 'pending') return `the ${what} of an injection is not known yet`;
  return why === 'unknown' ? `${what} "${text}" is not known` : `the ${what} "${text}" can't be read`;
}
