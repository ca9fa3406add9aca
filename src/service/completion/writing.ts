import type { KeyIndex } from '../../note/tree/shape.ts';
import type { IsoDate } from '../../note/values/values.ts';
import type { Tables } from '../../practice/tables.ts';

/** What is known while a file is being written. */
export interface Writing {
  readonly tables: Tables;
  /** The local date of today, which nobody but the clock knows. */
  readonly today: IsoDate;
  readonly shapes: ReadonlyMap<string, KeyIndex>;
  /** Name of the outermost map: note or practice. */
  readonly root: string;
}
