import type { Injection } from '../note/generated/types.ts';
import type { IsoDate } from '../note/values/values.ts';
import type { LimitRow } from '../reference/limits.ts';
import type { Mark } from '../reference/types.ts';
import type { CreamDose } from './creams.ts';
import type { Given, Unlimited, Unread } from './injections.ts';
import type { Facts } from '../limits/ceilings.ts';

/** How much of one agent was given, with or without epinephrine. */
export interface KindSum {
  readonly agent: string;
  readonly epinephrine: boolean;
  readonly mg: number;
}

/** What other notes say was given to the same patient on one day. */
export interface OthersOn {
  /** How many other notes there are of that patient and day. */
  readonly notes: number;
  /** Each kind once. */
  readonly sums: readonly KindSum[];
  readonly epinephrineMicrograms: number;
  /** One by one, for whoever shows them; listed only when asked for. */
  readonly given: readonly Given[];
  /** Set where one of them has an anesthetic that can't be counted. */
  readonly unjudged: boolean;
}

/** Answers for a day what other notes say; undefined where nobody looked. */
export type Elsewhere = (day: IsoDate) => OthersOn | undefined;

/** All of one agent, with or without epinephrine, against its own limit. */
export interface AgentDose {
  readonly agent: string;
  readonly epinephrine: boolean;
  readonly mg: number;
  readonly mgPerKg: number | null;
  /** Without a weight the cap alone; Infinity where there is none. */
  readonly limitMg: number;
  readonly boundBy: 'weight' | 'cap';
  readonly fraction: number;
  readonly limit: LimitRow;
  readonly given: readonly Given[];
}

/** What may still be given of a product that was used, or that the practice has in stock. */
export interface Left {
  readonly product: string;
  readonly mg: number;
  /** Rounded down to 0.1 mL. */
  readonly ml: number;
}

/** One step of the sum, in the words that a hover or a summary shows. */
export interface Step {
  readonly text: string;
  /** Key of the table of sources, and how sure the step is of it. */
  readonly source?: string;
  readonly mark?: Mark;
}

/** A published limit below the ceiling that this dose passes. */
export interface Advisory {
  readonly limit: LimitRow;
  /** 0 where the authority advises against the use. */
  readonly maxMg: number;
  readonly mg: number;
  readonly given: readonly Given[];
}

/** An anesthetic for which nothing is published for such a patient. */
export interface NoLimit {
  readonly agent: string;
  readonly epinephrine: boolean;
  readonly given: readonly Given[];
}

/** The dose of one day: of the visit, or of a later day on which more was given. */
export interface DoseJudgement {
  readonly judged: boolean;
  /** Sum of the agents' fractions of their own limits; null where it can't be judged. */
  readonly fraction: number | null;
  /** Why it can't be judged, or not in full. */
  readonly why: string | undefined;
  readonly epinephrineMicrograms: number;
  readonly agents: readonly AgentDose[];
  readonly left: readonly Left[];
  readonly advisories: readonly Advisory[];
  /** The whole sum, in order, so that every number can be followed. */
  readonly steps: readonly Step[];
  readonly day: IsoDate | undefined;
  readonly facts: Facts;
  /** Every entry of the day, in the order of the note. */
  readonly injections: readonly Injection[];
  /** The sum of what can be read and limited: where the dose can't be judged, it is this much at the very least. */
  readonly atLeast: number;
  /** Every injection that was counted, in the order of the note. */
  readonly given: readonly Given[];
  readonly unread: readonly Unread[];
  readonly unlimited: readonly Unlimited[];
  readonly noLimit: readonly NoLimit[];
  readonly creams: readonly CreamDose[];
  /** Limits of other authorities, below the ceiling, that this dose passes; the lowest first. */
  readonly elsewhere: readonly Advisory[];
  /** Without a weight: from which body weight on the dose is within its limit, in kg, rounded up to 0.1. */
  readonly neededKg: number | undefined;
  /** What other notes say of this patient and day, counted with it; undefined where nobody looked. */
  readonly others: OthersOn | undefined;
  /** Of a visit, the doses of later days that its events mention. */
  readonly later: readonly DoseJudgement[];
}
