import type { Judgement } from '../../checks/index.ts';
import type { Note } from '../../note/generated/types.ts';
import type { Source } from '../../note/read.ts';

/** A note that was checked, with the path under which the user knows it. */
export interface Checked {
  readonly path: string;
  readonly source: Source<Note>;
  readonly judgement: Judgement;
}
