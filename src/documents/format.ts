/** Data of a document, in lists by their names. */
export type Records<Name extends string> = Readonly<Record<Name, readonly object[]>>;

/** One form of a document: the command line chooses it by its name, the editor by its title. */
export interface Format<Input extends readonly unknown[]> {
  readonly write: (...input: Input) => string;
  /** Of the file's name, without the dot. */
  readonly ending: string;
  readonly title: string;
}
