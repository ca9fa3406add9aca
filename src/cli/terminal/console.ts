/** What a command may touch of the outside: passed in, so that tests need no process. */
export interface Console {
  readonly write: (text: string) => void;
  readonly error: (text: string) => void;
  /** Whether colors are wanted: only on a terminal. */
  readonly color: boolean;
  readonly errorIsTerminal: boolean;
  /** Standard input, of which no more is read than shows that it is longer than `limit` bytes. */
  readonly readInput: (limit: number) => Promise<Uint8Array>;
  /** Asks a question that is answered with yes or no; absent where nobody sits at a terminal. */
  readonly ask?: ((question: string) => Promise<boolean>) | undefined;
  /** Whether nothing is wanted but the output itself and what went wrong. */
  readonly quiet?: boolean;
  /** The name of a note that is read from standard input, where it was given one. */
  readonly inputName?: string;
  /** Today's local date, YYYY-MM-DD. */
  readonly today: () => string;
  /** This moment, for what bears a time stamp. */
  readonly now: () => Date;
  /** Folder in which facts of notes may be kept between runs; absent where nothing may be. */
  readonly cache?: string | undefined;
  /** The program of a thread that reads notes; absent where there are no threads. */
  readonly threadFile?: string | undefined;
  readonly cwd: string;
}
