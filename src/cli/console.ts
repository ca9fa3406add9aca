/** What a command may touch of the outside: passed in, so that tests need no process. */
export interface Console {
  readonly write: (text: string) => void;
  readonly error: (text: string) => void;
  /** Whether colors are wanted: only on a terminal. */
  readonly color: boolean;
  readonly errorIsTerminal: boolean;
  readonly readInput: () => Promise<Uint8Array>;
  /** Today's local date, YYYY-MM-DD. */
  readonly today: () => string;
  readonly cwd: string;
}
