import type { Report } from '../../note/tree/finding.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';
import type { DressingRow } from '../../reference/dressings.ts';
import type { SiteRow } from '../../reference/sites.ts';
import type { Check } from '../check.ts';
import { rowsIn } from '../words.ts';
import { atSites, common } from './_place.ts';

const rowsOf = ({ dressing = [] }: Procedure, tables: Tables): readonly DressingRow[] =>
  dressing.flatMap((leaf) => rowsIn(tables.dressings, leaf));

const because = {
  hair: 'tape does not stick to hair',
  fold: 'tape does not stick in a fold',
  no: 'tape does not stick to a wet or open place',
} as const;

/** The adhesive of a dressing that nothing else holds, where tape does not stick. */
function loose(procedure: Procedure, { dressable, name }: SiteRow, tables: Tables): Report | undefined {
  if (dressable === 'yes' || rowsOf(procedure, tables).some(({ presses }) => presses === true))
    return undefined;
  const at = procedure.dressing?.find((leaf) =>
    rowsIn(tables.dressings, leaf).some(({ adhesive }) => adhesive === true),
  );
  if (at === undefined || rowsOf(procedure, tables).some(({ presses }) => presses === true)) return undefined;
  return { at, args: { word: at.text, site: name, because: because[dressable] } };
}

export const check: Check = {
  code: 'dressing/does-not-hold',
  severity: 'information',
  title: 'Tape on hair, in a fold or on a wet place',
  why: 'Tape comes off there within hours. A wrap, pressure by hand or ointment alone works better; on the vulva a textbook holds gauze in place with underwear.',
  sources: [{ source: 'vulva-textbook', mark: 'Q' }, common],
  messages: {
    main: '{word} on the {site}: {because}. Use ointment alone, or a wrap where one fits.',
  },
  find: atSites(loose),
};
