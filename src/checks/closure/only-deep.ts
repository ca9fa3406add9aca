import type { Report } from '../../note/tree/finding.ts';
import type { Check } from '../check.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';
import { rowsIn } from '../words.ts';
import { format } from '../sources.ts';

/** Whether a dressing holds the skin together, so that the deep layer is all that was sewn. */
const holds = ({ dressing = [] }: Procedure, tables: Tables): boolean =>
  dressing.some((leaf) => rowsIn(tables.closures, leaf).some(({ stitched }) => !stitched));

function onlyDeep(procedure: Procedure, tables: Tables): Report | undefined {
  const { closure = [] } = procedure;
  const [first] = closure;
  const deep = closure.every(({ layer }) =>
    rowsIn(tables.layers, layer).every(({ name }) => name === 'deep'),
  );
  const named = closure.every(({ layer }) => rowsIn(tables.layers, layer).length > 0);
  return first?.layer !== undefined && deep && named && !holds(procedure, tables)
    ? { at: first.layer }
    : undefined;
}

export const check: Check = {
  code: 'closure/only-deep',
  severity: 'information',
  title: 'Only the deep layer of a closure',
  why: 'Stitches in the skin that nobody recorded stay in.',
  sources: [format],
  messages: {
    main: 'The closure names the deep layer only. Write how the skin was closed: stitches, strips or glue; or accept this if it was left so.',
  },
  find: ({ note, tables }) =>
    (note.procedures ?? [])
      .map((procedure) => onlyDeep(procedure, tables))
      .filter((report) => report !== undefined),
};
