import type { Procedure } from '../../note/generated/types.ts';
import { phrasesOf, type Mention } from '../../note/words/phrases.ts';
import type { LesionRow } from '../../reference/lesions.ts';
import type { Subject } from '../check.ts';

/** What the lesion's description says of its surface, without what it denies. */
export const mentions = ({ lesion }: Procedure, { tables }: Subject): readonly Mention<LesionRow>[] =>
  phrasesOf(tables.lesions)
    .mentionsIn(lesion?.value ?? '')
    .filter(({ standing }) => standing === 'asserted');
