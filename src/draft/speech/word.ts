/** What a word of a text is, after numbers in words were put into figures. */
export type Kind =
  | 'word'
  | 'number'
  /** A number with its unit: `1.5 mL`, `1%`. */
  | 'quantity'
  /** Two lengths or more: `5 x 6 mm`. */
  | 'sides'
  /** From one number to another: `10-14 days`. */
  | 'range'
  /** `1:100,000`. */
  | 'ratio'
  /** `4-0`. */
  | 'suture'
  | 'date'
  | 'time'
  | 'mark'
  /** A new line that ends what is before it. */
  | 'line';

/** A word of a text, at characters `from` to `to` of it. */
export interface Word {
  /** As it is read: `1.5 mL` where "one and a half cc" was said. */
  readonly text: string;
  /** The same in small letters. */
  readonly low: string;
  readonly kind: Kind;
  /** The digits of a number or quantity; of a range the lower. */
  readonly digits?: string;
  /** The unit of a quantity, sides or a range, as it is written by preference. */
  readonly unit?: string;
  readonly from: number;
  readonly to: number;
  /** Whether a hyphen joins it to the word before. */
  readonly joined: boolean;
}

export interface Span {
  readonly from: number;
  readonly to: number;
}

/** The words of a text, and where words are that say nothing, such as "um" and a spoken "comma". */
export interface Speech {
  readonly words: readonly Word[];
  readonly passed: readonly Span[];
}

/** The word at a place in small letters; empty where there is none. */
export const lowAt = (words: readonly Word[], at: number): string => words[at]?.low ?? '';
