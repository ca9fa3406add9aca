import type { Report } from '../../note/tree/finding.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';
import type { SiteRow } from '../../reference/sites.ts';
import type { Check } from '../check.ts';
import { rowsIn } from '../words.ts';
import { atSites, common } from './_place.ts';

const rubs = {
  waistband: 'a waistband',
  strap: 'a strap',
  collar: 'a collar',
  shoe: 'a shoe',
  seat: 'sitting',
} as const;

/** An uncovered wound where clothes rub; where the practice leaves wounds open it is its routine. */
function rubbed(procedure: Procedure, base: SiteRow, tables: Tables): Report | undefined {
  const [only] = procedure.dressing ?? [];
  if (base.friction === undefined || only === undefined || tables.practice.woundCare.open === true)
    return undefined;
  const bare = procedure.dressing?.every((leaf) => {
    const rows = rowsIn(tables.dressings, leaf);
    return rows.length > 0 && rows.every(({ name }) => name === 'none');
  });
  if (bare !== true || rowsIn(tables.methods, procedure.method)[0]?.takesTissue !== true) return undefined;
  return { at: only, args: { site: base.name, rubs: rubs[base.friction] } };
}

export const check: Check = {
  code: 'dressing/rubbed',
  severity: 'information',
  title: 'An open wound where clothes rub',
  why: 'A waistband, strap, collar or shoe opens a fresh wound again. Not reported where the practice routinely leaves wounds open (`wound-care` in its file).',
  sources: [common],
  messages: {
    main: 'The wound on the {site} is left uncovered, and {rubs} rubs there. A dressing for the first days protects it.',
  },
  sourcesDiffer: {
    how: 'Most leaflets keep a wound moist and covered, one leaves it to the air until there is a scab. Covering is followed.',
    settings: ['wound-care.open'],
  },
  find: atSites(rubbed),
};
