import type { Related } from '../../note/tree/finding.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { Subject } from '../check.ts';
import { energiesOf, type Energy } from '../current.ts';

/** One report for each procedure: at the first word that says heat or a spark. */
export function sparks(subject: Subject): readonly { procedure: Procedure; spark: Energy }[] {
  const found: { procedure: Procedure; spark: Energy }[] = [];
  for (const procedure of subject.note.procedures ?? []) {
    const [spark] = energiesOf(procedure, subject.tables);
    if (spark !== undefined) found.push({ procedure, spark });
  }
  return found;
}

/** The site of a procedure, to be shown beside a finding. */
export const siteIn = ({ site }: Procedure): readonly Related[] =>
  site === undefined ? [] : [{ start: site.start, end: site.end, form: 'site', args: { site: site.text } }];
