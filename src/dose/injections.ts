import { daysBetween } from '../note/values/days.ts';
import { saysNothingGiven } from '../note/words/dictated.ts';
import type { Injection } from '../note/generated/types.ts';
import type { Leaf } from '../note/tree/leaf.ts';
import type { Range } from '../note/tree/tree.ts';
import type { IsoDate, Mixture, Occasion } from '../note/values/values.ts';
import { plainWord } from '../note/words/word-table.ts';
import type { StockProduct, Tables } from '../practice/tables.ts';
import type { AgentRow } from '../reference/agents.ts';
import { isOver } from './arithmetic.ts';

/** Why epinephrine that is in a solution does not unlock the higher limit. */
export type Locked = 'weak' | 'stale';

/** One injection in mg of the drug that was drawn. */
export interface Given {
  readonly agent: AgentRow;
  /** Whether the limit with epinephrine counts. */
  readonly withEpinephrine: boolean;
  readonly mg: number;
  readonly epinephrineMicrograms: number;
  readonly ml: number;
  /** mg in each mL of what was injected: less than the strength drawn where it is buffered. */
  readonly mgPerMl: number;
  /** Strength as drawn. */
  readonly drawnMgPerMl: number;
  /** Epinephrine as drawn, in µg/mL. */
  readonly drawnMicrogramsPerMl: number;
  /** Share of what was injected that is the drug's solution and not bicarbonate. */
  readonly share: number;
  readonly locked: Locked | undefined;
  /** The product of the practice that it was, where the note names one. */
  readonly product: StockProduct | undefined;
  readonly injection: Injection;
  /** Where its volume is. */
  readonly at: Range;
}

/** A cream, gel or patch on the skin. */
export interface Applied {
  readonly agent: AgentRow;
  readonly grams: number | undefined;
  readonly cm2: number | undefined;
  readonly minutes: number | undefined;
  readonly injection: Injection;
  readonly at: Range;
}

/** What can't be counted, and what of it is in the way. */
export interface Unread {
  readonly injection: Injection;
  readonly what: 'agent' | 'product' | 'concentration' | 'epinephrine' | 'volume' | 'amount' | 'strength';
  readonly why: 'missing' | 'pending' | 'unreadable' | 'unknown';
  readonly at: Range;
  /** As typed, where something is typed. */
  readonly text: string;
  /** What it holds at the very least, where so much can be read. */
  readonly atLeast?: Given;
}

/** Something that holds no anesthetic with a limit of this kind. */
export interface Unlimited {
  readonly agent: AgentRow;
  readonly injection: Injection;
}

export type Item =
  | { readonly kind: 'given'; readonly given: Given }
  | { readonly kind: 'applied'; readonly applied: Applied }
  | { readonly kind: 'unlimited'; readonly unlimited: Unlimited }
  | { readonly kind: 'unread'; readonly unread: Unread };

/** The product of the practice that an injection names, if it is in stock: under `product`, or in a dictated line. */
export function productOf(injection: Injection, { stock }: Tables): StockProduct | undefined {
  if (stock.size === 0) return undefined;
  const name = injection.product === undefined ? nameInLine(injection) : injection.product.value;
  return name === undefined ? undefined : stock.get(plainWord(name));
}

/** All that a dictated line says beside its volume, which may be the name of a product word for word. */
function nameInLine({ head, volume }: Injection): string | undefined {
  if (!('text' in head) || typeof head.text !== 'string') return undefined;
  const rest = volume === undefined ? head.text : head.text.replace(volume.text, ' ');
  return rest.replace(/^[\s,;]*(?:of\s+)?|[\s,;]+$/gi, '');
}

/** The agent that an injection names, itself or through its product. */
export function agentOf(injection: Injection, tables: Tables): AgentRow | undefined {
  const { agent } = injection;
  if (agent !== undefined && agent.value === undefined) return undefined;
  const named = agent === undefined ? undefined : tables.agents.find(agent.value ?? '');
  return named ?? productOf(injection, tables)?.agent;
}

/** Whether an entry of `anesthetic` says no more than that none was given. */
export const isNothing = ({ agent, keys }: Injection): boolean =>
  keys.size === 1 && agent?.value !== undefined && saysNothingGiven(agent.value);

/** Reads one entry of `anesthetic`, as given on a day. */
export function itemOf(injection: Injection, day: IsoDate | undefined, tables: Tables): Item {
  const agent = agentOf(injection, tables);
  if (agent === undefined) return unread(injection, nameless(injection));
  if (agent.form === 'cream' || isCreamByAmount(injection, agent)) return applied(injection, agent, tables);
  if (!agent.limited) return { kind: 'unlimited', unlimited: { agent, injection } };
  return injected(injection, agent, day, tables);
}

/** An agent of injections that has an amount in g and no volume was put on the skin. */
export const isCreamByAmount = (injection: Injection, agent: AgentRow): boolean =>
  agent.form === 'injected' && injection.amount !== undefined && injection.volume === undefined;

type Fault = Omit<Unread, 'injection'>;

const unread = (injection: Injection, fault: Fault): Item => ({
  kind: 'unread',
  unread: { injection, ...fault },
});

/** Why no agent is known. */
function nameless({ agent, product, head }: Injection): Fault {
  if (agent !== undefined) return faultOf('agent', agent, 'unknown');
  if (product !== undefined) return faultOf('product', product, 'unknown');
  return { what: 'agent', why: 'missing', at: head, text: '' };
}

function faultOf(
  what: Unread['what'],
  leaf: Leaf<unknown>,
  otherwise: 'unknown' | 'unreadable' = 'unreadable',
): Fault {
  return { what, why: leaf.pending ? 'pending' : otherwise, at: leaf, text: leaf.text };
}

/** A number that an injection needs: its value, or why there is none. */
function needed(
  injection: Injection,
  what: 'concentration' | 'volume' | 'amount',
  byProduct?: number,
): number | Fault {
  const leaf = injection[what];
  if (leaf === undefined) return byProduct ?? { what, why: 'missing', at: injection.head, text: '' };
  return leaf.value === undefined ? faultOf(what, leaf) : leaf.value.amount;
}

function applied(injection: Injection, named: AgentRow, tables: Tables): Item {
  const grams = needed(injection, 'amount');
  if (typeof grams !== 'number') return unread(injection, grams);
  const percent = (injection.concentration?.value?.amount ?? 0) / 10;
  const cream = named.form === 'injected' ? tables.agents.find(`${named.name} cream ${percent}%`) : undefined;
  return {
    kind: 'applied',
    applied: {
      agent: cream ?? named,
      grams,
      cm2: injection.area?.value?.amount,
      minutes: minutesBetween(injection.on?.value, injection.off?.value),
      injection,
      at: injection.amount ?? injection.head,
    },
  };
}

const minutesOfDay = 24 * 60;

function minutesBetween(on: Occasion | undefined, off: Occasion | undefined): number | undefined {
  if (on?.minutes === undefined || off?.minutes === undefined) return undefined;
  // What came off at an earlier hour came off the next day, or one of the two is wrong: never too short.
  return off.minutes - on.minutes + (off.minutes < on.minutes ? minutesOfDay : 0);
}

function injected(injection: Injection, agent: AgentRow, day: IsoDate | undefined, tables: Tables): Item {
  const product = productOf(injection, tables);
  const strength = needed(injection, 'concentration', product?.mgPerMl);
  if (typeof strength !== 'number') return unread(injection, strength);
  const ml = needed(injection, 'volume');
  if (typeof ml !== 'number') return unread(injection, ml);
  const { drawn, unclear } = epinephrineOf(injection, product);
  const mixture = injection.buffered === undefined ? product?.buffered : injection.buffered.value;
  const share = shareOf(mixture);
  const locked = lockedBy(drawn, mixture, injection.mixedOn?.value, day, tables);
  const given: Given = {
    agent,
    // What can't be read may be epinephrine: the higher limit then gives the least that is used up for sure.
    withEpinephrine: unclear !== undefined || (drawn > 0 && locked === undefined),
    mg: ml * strength * share,
    epinephrineMicrograms: ml * drawn * share,
    ml,
    mgPerMl: strength * share,
    drawnMgPerMl: strength,
    drawnMicrogramsPerMl: drawn,
    share,
    product,
    locked,
    injection,
    at: injection.volume ?? injection.head,
  };
  return unclear === undefined
    ? { kind: 'given', given }
    : unread(injection, { ...faultOf('epinephrine', unclear), atLeast: given });
}

interface EpinephrineRead {
  /** In µg/mL, 0 where none is written. */
  readonly drawn: number;
  /** What is written and can't be read. */
  readonly unclear?: Leaf<unknown>;
}

/** The epinephrine of an injection; that it is in a dictated line without its strength may be the name of a product. */
export function epinephrineOf(injection: Injection, product: StockProduct | undefined): EpinephrineRead {
  const { epinephrine } = injection;
  if (epinephrine?.value !== undefined) return { drawn: epinephrine.value.microgramsPerMl };
  if (epinephrine === undefined || (product !== undefined && injection.product === undefined))
    return { drawn: product?.epinephrineMicrogramsPerMl ?? 0 };
  return { drawn: 0, unclear: epinephrine };
}

/**
 * How much of a mixture is the anesthetic. Parts in the wrong order are reported elsewhere; the greater counts, so
 * that nothing is underestimated. Without parts it counts as undiluted.
 */
export function shareOf(mixture: Mixture | undefined): number {
  const parts = mixture?.buffered === true ? mixture.parts : undefined;
  if (parts === undefined) return 1;
  const more = Math.max(parts.anesthetic, parts.bicarbonate);
  const whole = parts.anesthetic + parts.bicarbonate;
  return whole > 0 ? more / whole : 1;
}

/** Why epinephrine does not unlock the higher limit, or undefined where it does or where there is none. */
export function lockedBy(
  drawnMicrogramsPerMl: number,
  mixture: Mixture | undefined,
  mixedOn: IsoDate | undefined,
  day: IsoDate | undefined,
  tables: Tables,
): Locked | undefined {
  if (drawnMicrogramsPerMl === 0) return undefined;
  if (isOver(tables.epinephrine.unlocksFrom.microgramsPerMl, drawnMicrogramsPerMl)) return 'weak';
  const days =
    mixture?.buffered === true && mixedOn !== undefined && day !== undefined ? daysBetween(mixedOn, day) : 0;
  return days > tables.epinephrine.bufferedDays.days ? 'stale' : undefined;
}
