import type { Report } from '../../note/tree/finding.ts';
import type { Closure, Procedure } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Check } from '../check.ts';
import { rowsIn } from '../words.ts';
import { format } from '../sources.ts';

const isDeep = ({ layer }: Closure, tables: Tables): boolean =>
  rowsIn(tables.layers, layer)[0]?.name === 'deep';

/** The layers whose stitches have to come out: not the deep ones, and not what is absorbed. */
const toRemove = ({ closure = [] }: Procedure, tables: Tables): readonly Closure[] =>
  closure.filter(
    (one) => !isDeep(one, tables) && rowsIn(tables.materials, one.material)[0]?.absorbable !== true,
  );

/** The sum of counts; undefined where one of them is not known. */
const totalOf = (counts: readonly (number | undefined)[]): number | undefined =>
  counts.reduce((sum, count) => (sum === undefined || count === undefined ? undefined : sum + count), 0);

/** Stitches out against stitches in, where both are counted in full. */
function counted(procedure: Procedure, tables: Tables): Report | undefined {
  const outs = procedure.suturesOut ?? [];
  const out = outs.at(-1)?.count;
  const layers = toRemove(procedure, tables).filter(({ count }) => count !== undefined);
  const inside = layers.map(({ count }) => count?.value);
  const removed = totalOf(outs.map(({ count }) => count?.value));
  if (out === undefined || removed === undefined || inside.length === 0) return undefined;
  const placed = totalOf(inside);
  if (placed === undefined || removed === placed) return undefined;
  return {
    at: out,
    form: removed > placed ? 'more' : 'fewer',
    args: { out: removed, placed, left: placed - removed },
    related: layers.flatMap(({ count }) =>
      count === undefined ? [] : [{ start: count.start, end: count.end, form: 'placed', args: {} }],
    ),
  };
}

export const check: Check = {
  code: 'closure/stitch-count',
  severity: 'warning',
  title: 'Stitches removed and stitches placed do not agree',
  why: 'A stitch that is left in can get infected; counting finds it.',
  sources: [format],
  messages: {
    more: '{out} stitches were removed, and {placed} were placed. Check both numbers.',
    fewer:
      '{out} of {placed} stitches were removed. If {left} came out earlier or stayed in, write that; otherwise look again.',
    placed: 'stitches placed',
  },
  alternatives: { readAs: [] },
  find: ({ note, tables }) =>
    (note.procedures ?? [])
      .map((procedure) => counted(procedure, tables))
      .filter((report) => report !== undefined),
};
