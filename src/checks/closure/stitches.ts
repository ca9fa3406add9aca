import { stitchesOf } from '../../followup/sutures.ts';
import type { Closure, Procedure } from '../../note/generated/types.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import type { Tables } from '../../practice/tables.ts';
import type { SiteRegion } from '../../reference/sites.ts';
import type { SutureSizeRow } from '../../reference/suture-sizes.ts';
import type { Check, Report, Subject } from '../check.ts';
import { isPunchUsed, punchOf } from '../punch.ts';
import { rowsIn } from '../words.ts';

/** The zeros of a size: 4 of 4-0; thicker than 0 it goes below 1. */
const zerosOf = (size: string): number => (size.includes('-') ? Number.parseInt(size, 10) : 1 - Number(size));
const sizeOf = (zeros: number): string => `${zeros}-0`;

const isDeep = ({ layer }: Closure, tables: Tables): boolean =>
  rowsIn(tables.layers, layer)[0]?.name === 'deep';

/** How far a size may lie from the published ones: practice differs by one step everywhere. */
const step = 1;

/** The sizes of a procedure's stitches in the skin. */
const skinSizes = ({ closure = [] }: Procedure, tables: Tables): readonly Leaf<string>[] =>
  closure.flatMap((one) => (one.size?.value === undefined || isDeep(one, tables) ? [] : [one.size]));

const usualText = ({ thickest, thinnest }: SutureSizeRow): string =>
  thickest === thinnest ? sizeOf(thickest) : `${sizeOf(thickest)} to ${sizeOf(thinnest)}`;

function isOdd(size: string, { thickest, thinnest }: SutureSizeRow): boolean {
  const zeros = zerosOf(size);
  return zeros < thickest - step || zeros > thinnest + step;
}

function oddSizes(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  const { note, tables } = subject;
  for (const procedure of note.procedures ?? []) {
    const sizes = skinSizes(procedure, tables);
    const base = sizes.length === 0 ? undefined : subject.siteOf(procedure)?.base;
    const row = tables.sutureSizes.find(({ groups }) => groups.some((group) => group === base?.group));
    if (base === undefined || row === undefined) continue;
    for (const size of sizes)
      if (isOdd(size.value ?? '', row))
        found.push({ at: size, args: { size: size.text, site: base.name, usual: usualText(row) } });
  }
  return found;
}

const open: ReadonlySet<string | undefined> = new Set(['none', 'second intention']);
const face: ReadonlySet<SiteRegion> = new Set(['face', 'eye', 'nose', 'ear', 'mouth']);

/** Whether a wound was left open: the note says so, and no stitch stopped the bleeding. */
const isOpen = (procedure: Procedure, tables: Tables): boolean =>
  (procedure.closure ?? []).every(({ how }) => open.has(tables.closures.find(how?.value ?? '')?.name)) &&
  stitchesOf(procedure, tables) === 'none';

function openPunch(procedure: Procedure, subject: Subject): Report | undefined {
  const { tables } = subject;
  const how = procedure.closure?.[0]?.how;
  const punch = punchOf(procedure, tables);
  if (how === undefined || punch === undefined || punch.mm <= tables.openPunch.faceMm) return undefined;
  if (!isOpen(procedure, tables)) return undefined;
  const { start, end, text } = punch.at;
  const related = [{ start, end, form: 'size', args: {} }];
  if (punch.mm > tables.openPunch.mm) return { at: how, args: { size: text }, related };
  const base = subject.siteOf(procedure)?.base;
  if (base === undefined || !face.has(base.region)) return undefined;
  return { at: how, form: 'face', args: { size: text, site: base.name }, related };
}

function glued(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  const { note, tables } = subject;
  for (const procedure of note.procedures ?? [])
    for (const { how } of procedure.closure ?? []) {
      if (how === undefined || !rowsIn(tables.closures, how).some(({ name }) => name === 'tissue glue'))
        continue;
      const base = subject.siteOf(procedure)?.base;
      if (base?.mucosa === true) found.push({ at: how, args: { site: base.name } });
      else if (base?.group === 'joint extensor')
        found.push({ at: how, form: 'tension', severity: 'information', args: { site: base.name } });
    }
  return found;
}

export const checks: readonly Check[] = [
  {
    code: 'closure/odd-suture-size',
    about: ['closure'],
    severity: 'information',
    title: 'A stitch far thicker or thinner than is usual at the site',
    why: 'Thick stitches mark a face, thin ones break where the skin pulls; a size that is far off may be a slip of the pen. Only what lies more than one step outside of all published sizes is found, and deep stitches are not asked about.',
    sources: [
      { source: 'suture-chart', mark: 'Q' },
      { source: 'family-practice-guide', mark: 'Q' },
      { source: 'plastic-surgery-text', mark: 'Q' },
    ],
    messages: {
      main: '{size} in the skin of the {site} is unusual; {usual} is published. Check the size.',
    },
    find: oddSizes,
  },
  {
    code: 'closure/open-punch',
    when: isPunchUsed,
    severity: 'information',
    title: 'A larger punch left open',
    why: 'In a trial on arm, thigh and back 4 mm wounds looked alike, sutured or open, and of 8 mm the patients liked the sutured ones better; complications were equal. It had no face, where open healing is usual up to 3 mm.',
    sources: [
      { source: 'punch-closure-2005', mark: 'Q' },
      { source: 'common', mark: 'common' },
    ],
    messages: {
      main: 'A punch of {size} heals open with a plainer scar than sutured, as a trial found for 8 mm; up to 4 mm it made no difference. If it was meant so, accept this.',
      face: 'A punch of {size} on the {site} was left open; on the face that is usual up to 3 mm. If it was meant so, accept this.',
      size: 'the punch',
    },
    find: (subject) =>
      (subject.note.procedures ?? [])
        .map((procedure) => openPunch(procedure, subject))
        .filter((report) => report !== undefined),
  },
  {
    code: 'closure/glue-place',
    about: ['closure'],
    severity: 'warning',
    title: 'Tissue glue where it is not meant to be',
    why: 'Tissue glue is not for mucosa, and gives way where the skin pulls, as over knuckles, elbows and knees.',
    sources: [{ source: 'tissue-glue-reference', mark: 'Q' }],
    messages: {
      main: 'Tissue glue on mucosa ({site}): it is not meant for that. Check site and closure.',
      tension: 'Tissue glue over the {site}, where the skin pulls: it may give way. Stitches hold there.',
    },
    find: glued,
  },
];
