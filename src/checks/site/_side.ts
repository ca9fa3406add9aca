import type { Report } from '../../note/tree/finding.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import { type SideWord, type SiteReading } from '../../note/words/site.ts';
import { within, type Range } from '../../note/tree/tree.ts';
import type { Sourced } from '../../reference/types.ts';
import type { Check, Subject } from '../check.ts';
import { shared } from '../shared.ts';

export const records: Sourced = { source: 'laterality-records', mark: 'Q' };

export const identification: Sourced = { source: 'site-identification', mark: 'Q' };

export interface Located {
  readonly procedure: Procedure;
  readonly site: Leaf<string>;
  readonly reading: SiteReading;
}

/** The procedures whose site could be read. */
export const located = shared((subject: Subject): readonly Located[] => {
  const { note, siteOf } = subject;
  const found: Located[] = [];
  for (const procedure of note.procedures ?? []) {
    const reading = siteOf(procedure);
    if (procedure.site !== undefined && reading !== undefined)
      found.push({ procedure, site: procedure.site, reading });
  }
  return found;
});

export const placeOf = ({ node }: Leaf<string>, { from, to }: SideWord): Range => within(node, from, to);

export type Judge = (one: Located, subject: Subject) => readonly Report[];

/** What judges find in every procedure whose site could be read. */
export const ofLocated = (...judges: readonly Judge[]): NonNullable<Check['find']> =>
  function (subject) {
    const found: Report[] = [];
    for (const one of located(subject))
      for (const judge of judges) for (const report of judge(one, subject)) found.push(report);
    return found;
  };
