import type { Report } from '../../note/tree/finding.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';
import type { SiteRow } from '../../reference/sites.ts';
import type { Subject } from '../check.ts';

export type Judge = (procedure: Procedure, base: SiteRow, tables: Tables) => Report | undefined;

export const atSites = (judge: Judge) =>
  function (subject: Subject): readonly Report[] {
    const found: Report[] = [];
    for (const procedure of subject.note.procedures ?? []) {
      const base = procedure.dressing === undefined ? undefined : subject.siteOf(procedure)?.base;
      const report = base && judge(procedure, base, subject.tables);
      if (report !== undefined) found.push(report);
    }
    return found;
  };

export const common = { source: 'common', mark: 'common' } as const;
