import { drugIn } from '../../dose/injected.ts';
import { isRunning, stitchesOf } from '../../followup/sutures.ts';
import type { Closure, Procedure } from '../../note/generated/types.ts';
import { readSite, type SiteReading } from '../../note/words/site.ts';
import type { Tables } from '../../practice/tables.ts';
import { rowsIn } from '../../checks/words.ts';

/**
 * What a method leaves: a wound that is cut or scraped, skin that was heated, frozen or painted with what destroys it,
 * or no more than a needle's mark.
 */
type Leaves = 'wound' | 'burn' | 'frozen' | 'chemical' | 'prick';

/** The sentence for each method, and what it leaves. */
const methods: ReadonlyMap<string, readonly [sentence: string, leaves: Leaves]> = new Map([
  ['shave', ['done-shave', 'wound']],
  ['deep shave', ['done-deep-shave', 'wound']],
  ['scissor', ['done-scissor', 'wound']],
  ['curettage', ['done-curettage', 'wound']],
  ['electrodesiccation and curettage', ['done-curettage-sealed', 'wound']],
  ['punch', ['done-punch', 'wound']],
  ['incisional', ['done-incisional', 'wound']],
  ['excisional', ['done-excisional', 'wound']],
  ['nail biopsy', ['done-nail', 'wound']],
  ['nail clipping', ['done-nail', 'wound']],
  ['electrosurgical excision', ['done-wire', 'wound']],
  ['electrodesiccation', ['done-heat', 'burn']],
  ['electrofulguration', ['done-current', 'burn']],
  ['cryotherapy', ['done-frozen', 'frozen']],
  ['incision and drainage', ['done-drained', 'wound']],
  ['injection', ['done-injected', 'prick']],
  ['laser', ['done-laser', 'burn']],
  ['topical destruction', ['done-chemical', 'chemical']],
]);

type Held = 'stitches' | 'staples' | 'glue' | 'strips' | 'open';

/** What a handout needs to know of one procedure. */
export interface Wound {
  readonly procedure: Procedure;
  readonly reading: SiteReading | undefined;
  /** Name of the sentence that says what was done. */
  readonly done: string;
  /** `wound` where the method is not known: what is said of wounds does no harm. */
  readonly leaves: Leaves;
  readonly takesTissue: boolean;
  readonly stitches: ReturnType<typeof stitchesOf>;
  /** Whether the stitches of the skin are one thread, so that their count says nothing to a patient. */
  readonly running: boolean;
  readonly held: readonly Held[];
  /** Whether dissolving stitches are under the skin. */
  readonly deep: boolean;
  /** Whether something covers it when the patient leaves; what the note does not say counts as covered. */
  readonly covered: boolean;
  /** Whether the note says what covers it. */
  readonly dressed: boolean;
  /** Whether a corticosteroid was injected. */
  readonly steroid: boolean;
}

/** What a note says of one procedure, as far as it is known. */
export function woundOf(procedure: Procedure, tables: Tables): Wound {
  const { site, method, closure = [] } = procedure;
  const row = rowsIn(tables.methods, method)[0];
  const [done, leaves] = methods.get(row?.name ?? '') ?? (['done-other', 'wound'] as const);
  const stitches = stitchesOf(procedure, tables);
  return {
    procedure,
    reading: site?.value === undefined ? undefined : readSite(site.value, tables.sites),
    done,
    leaves,
    takesTissue: row?.takesTissue === true,
    stitches,
    running: closure.some((one) => !isDeep(one, tables) && isRunning(one)),
    held: heldBy(closure, stitches, tables),
    deep: closure.some((one) => isDeep(one, tables) && dissolves(one, tables)),
    covered: isCovered(procedure, tables),
    dressed: (procedure.dressing ?? []).length > 0 && isCovered(procedure, tables),
    steroid: isSteroid(procedure, tables),
  };
}

/** Whether it was treated without a cut, so that the care of a wound is more than it asks for. */
export const isTreated = ({ leaves }: Wound): boolean => leaves !== 'wound' && leaves !== 'prick';

const isSteroid = ({ injected = [] }: Procedure, tables: Tables): boolean =>
  injected.some(({ drug }) =>
    drugIn(drug?.value ?? '', tables)?.contains.some(
      (name) => name === 'triamcinolone' || name === 'corticosteroid',
    ),
  );

const isDeep = ({ layer }: Closure, tables: Tables): boolean =>
  tables.layers.find(layer?.value ?? '')?.name === 'deep';

const dissolves = ({ material }: Closure, tables: Tables): boolean =>
  rowsIn(tables.materials, material)[0]?.absorbable === true;

function isCovered({ dressing = [] }: Procedure, tables: Tables): boolean {
  const rows = dressing.map((leaf) => rowsIn(tables.dressings, leaf));
  const allKnown = rows.length > 0 && rows.every((found) => found.length > 0);
  return !allKnown || rows.flat().some(({ name, ointment }) => name !== 'none' && ointment !== true);
}

const byClosure: ReadonlyMap<string, Held> = new Map([
  ['none', 'open'],
  ['second intention', 'open'],
  ['adhesive strips', 'strips'],
  ['tissue glue', 'glue'],
  ['staples', 'staples'],
]);

function heldBy(closures: readonly Closure[], stitches: Wound['stitches'], tables: Tables): readonly Held[] {
  const held = new Set<Held>();
  for (const { how, material } of closures)
    for (const leaf of [how, material])
      for (const row of rowsIn(tables.closures, leaf)) held.add(byClosure.get(row.name) ?? 'stitches');
  const sewn = stitches === 'removable' || stitches === 'absorbable';
  if (sewn && !held.has('staples')) held.add('stitches');
  if (!sewn) held.delete('stitches');
  if (held.size > 1) held.delete('open');
  return [...held];
}

/** How many stitches are in the skin; undefined where the note does not say it of each row of them. */
export function stitchCount({ procedure: { closure = [] } }: Wound, tables: Tables): number | undefined {
  const rows = closure.filter(
    (one) =>
      !isDeep(one, tables) && [one.material, one.technique, one.count].some((leaf) => leaf !== undefined),
  );
  const counts = rows.map(({ count }) => count?.value);
  if (counts.length === 0 || counts.includes(undefined)) return undefined;
  const sum = counts.reduce<number>((all, count) => all + (count ?? 0), 0);
  return sum > 0 ? sum : undefined;
}
