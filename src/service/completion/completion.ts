/** One thing to type, as plain data. */
export interface Completion {
  readonly label: string;
  readonly kind: 'key' | 'value';
  /** A few words beside the label. */
  readonly detail: string;
  /** The help text of a key. */
  readonly help: string;
  readonly start: number;
  readonly end: number;
  readonly insert: string;
  /** How many characters before its end the caret goes. */
  readonly caretBack: number;
  /** What typed letters are compared with. */
  readonly filter: string;
  /** Sorts as the schema does, what must be there first. */
  readonly sort: string;
  /** Whether to ask again at once for what can follow. */
  readonly again: boolean;
  /** Whether the value is whole with it, so that a snippet can go on to its next gap. */
  readonly whole: boolean;
}
