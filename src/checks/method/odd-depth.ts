import type { Report } from '../../note/tree/finding.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Check } from '../check.ts';
import { rowsIn } from '../words.ts';
import { format } from '../sources.ts';

const upper: ReadonlySet<string> = new Set(['epidermis', 'papillary dermis']);

function depthReport({ depth, method }: Procedure, tables: Tables): Report | undefined {
  const [row] = rowsIn(tables.methods, method);
  const [reached] = rowsIn(tables.depths, depth);
  if (depth === undefined || method === undefined || row === undefined || reached === undefined)
    return undefined;
  const severity = reached.reaches && row.odd?.[reached.reaches];
  if (severity === undefined) return undefined;
  return {
    at: depth,
    severity,
    rests: row,
    form: upper.has(reached.reaches ?? '') ? 'shallow' : 'deep',
    args: { method: row.name, depth: reached.name },
    related: [{ start: method.start, end: method.end, form: 'method', args: {} }],
  };
}

export const check: Check = {
  code: 'method/odd-depth',
  severity: 'warning',
  title: 'A depth that does not suit the method',
  why: 'A shave to mid dermis is usual; deeper it leaves a scar, and into the fat it is no longer a shave. A punch or an excision that stays in the upper dermis may be a slip.',
  sources: [
    { source: 'biopsy-guide-afp', mark: 'Q' },
    { source: 'biopsy-msd', mark: 'Q' },
    { source: 'melanoma-aad', mark: 'Q' },
    format,
  ],
  messages: {
    deep: 'A {method} to the {depth} goes deeper than the method is meant for. Check method and depth; a deep sample is a deep shave, a punch or an excision.',
    shallow: 'A {method} that reaches only the {depth} is unusually shallow. Check method and depth.',
    method: 'the method',
  },
  find: ({ note, tables }) =>
    (note.procedures ?? [])
      .map((procedure) => depthReport(procedure, tables))
      .filter((report) => report !== undefined),
};
