import type { Procedure } from '../../note/generated/types.ts';
import { phrasesOf, type Mention } from '../../note/words/phrases.ts';
import type { DepthRow } from '../../reference/depths.ts';
import type { LesionRow } from '../../reference/lesions.ts';
import type { Subject } from '../check.ts';
import { rowsIn } from '../words.ts';

/** Name of the method in its table. */
export const methodName = ({ method }: Procedure, { tables }: Subject): string | undefined =>
  rowsIn(tables.methods, method)[0]?.name;

/** The depth in its table. */
export const depthOf = ({ depth }: Procedure, { tables }: Subject): DepthRow | undefined =>
  rowsIn(tables.depths, depth)[0];

/** Methods that take the upper layers only. */
export const superficial: ReadonlySet<string | undefined> = new Set(['shave', 'scissor', 'curettage']);

/** What the lesion's description says of its surface, without what it denies. */
export const mentions = ({ lesion }: Procedure, { tables }: Subject): readonly Mention<LesionRow>[] =>
  phrasesOf(tables.lesions)
    .mentionsIn(lesion?.value ?? '')
    .filter(({ standing }) => standing === 'asserted');

/** What is said of the question beside a finding. */
export const question = 'what is asked';
