/** What the typed texts of a note mean. All amounts are in the unit that the name says; dates are local calendar dates. */

/** A calendar date that exists, as YYYY-MM-DD. */
export type IsoDate = string;

export interface Moment {
  readonly date: IsoDate;
  /** Minutes since midnight, undefined where no time was written. */
  readonly minutes: number | undefined;
}

/** A clock time, or the bare statement that something was done. */
export interface Occasion {
  /** Minutes since midnight; undefined for `done`. */
  readonly minutes: number | undefined;
  readonly date: IsoDate | undefined;
  /** False where the note says that it was not done. */
  readonly done: boolean;
}

export type Unit = 'mL' | 'g' | 'kg' | 'mm' | 'cm2' | 'mg/mL';

/**
 * An amount in the base unit of its kind: volume mL, mass of a cream g, body weight kg, length mm, area cm2,
 * concentration mg/mL.
 */
export interface Quantity {
  readonly amount: number;
  readonly unit: Unit;
  /** The number and the unit as they were typed: `137`, `lb`. */
  readonly typedAmount: number;
  readonly typedUnit: string;
}

export interface Dimensions {
  /** One, two or three lengths in mm. */
  readonly mm: readonly number[];
}

export interface Age {
  readonly months: number;
  readonly typedUnit: 'years' | 'months' | 'weeks' | 'days';
}

/** Epinephrine in a solution: 1:100,000 is 10 µg/mL; `none` is 0. */
export interface Dilution {
  readonly microgramsPerMl: number;
  /** The second number of the ratio, 100000; undefined for none and for µg/mL. */
  readonly ratio: number | undefined;
}

/** Anesthetic to bicarbonate by volume, 9:1. */
export interface Mixture {
  readonly buffered: boolean;
  /** Undefined where the note says only yes. */
  readonly parts: { readonly anesthetic: number; readonly bicarbonate: number } | undefined;
}

export interface Weighed {
  readonly how: 'measured' | 'stated' | 'chart' | 'estimated';
  readonly on: IsoDate | undefined;
}
