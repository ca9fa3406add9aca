import type { Sourced } from './types.ts';

/** What the words of the note mean by themselves: that `paper tape` holds by an adhesive, or `electrosurgery` sends current. */
export const meaning: Sourced = { source: 'format', mark: 'format' };

/** Common practice, for which no source is named. */
export const common: Sourced = { source: 'common', mark: 'common' };

type Unmarked<Row extends Sourced> = Omit<Row, keyof Sourced> & Partial<Sourced>;

/** The rows of a table with the source and mark that all have where they name none of their own. */
export const marked = <Row extends Sourced>(usual: Sourced, rows: readonly Unmarked<Row>[]): readonly Row[] =>
  // What is left out of a row is put in from `usual`.
  rows.map((row) => ({ ...usual, ...row }) as Row);
