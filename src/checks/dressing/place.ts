import { isWithoutHelp } from '../../followup/home-care.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';
import type { DressingRow } from '../../reference/dressings.ts';
import type { SiteRow } from '../../reference/sites.ts';
import type { Check, Report, Subject } from '../check.ts';
import { rowsIn } from '../words.ts';

const rowsOf = ({ dressing = [] }: Procedure, tables: Tables): readonly DressingRow[] =>
  dressing.flatMap((leaf) => rowsIn(tables.dressings, leaf));

const because = {
  hair: 'tape does not hold on hair',
  fold: 'tape does not hold in a fold',
  no: 'tape does not hold on a wet or open place',
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
  const bare = procedure.dressing?.every(({ value }) => tables.dressings.find(value ?? '')?.name === 'none');
  if (bare !== true || rowsIn(tables.methods, procedure.method)[0]?.takesTissue !== true) return undefined;
  return { at: only, args: { site: base.name, rubs: rubs[base.friction] } };
}

type Judge = (procedure: Procedure, base: SiteRow, tables: Tables) => Report | undefined;

const atSites = (judge: Judge) =>
  function (subject: Subject): readonly Report[] {
    const found: Report[] = [];
    for (const procedure of subject.note.procedures ?? []) {
      const base = procedure.dressing === undefined ? undefined : subject.siteOf(procedure)?.base;
      const report = base && judge(procedure, base, subject.tables);
      if (report !== undefined) found.push(report);
    }
    return found;
  };

function onGlue({ note, tables }: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const { closure, dressing } of note.procedures ?? []) {
    const glue = closure?.find((one) =>
      rowsIn(tables.closures, one.how).some(({ name }) => name === 'tissue glue'),
    );
    if (glue?.how === undefined) continue;
    const { start, end } = glue.how;
    for (const leaf of dressing ?? [])
      if (rowsIn(tables.dressings, leaf).some(({ ointment }) => ointment === true))
        found.push({
          at: leaf,
          args: { word: leaf.text },
          related: [{ start, end, form: 'glue', args: {} }],
        });
  }
  return found;
}

/** A wound where the patient can't reach it, and nobody at home who could: told once, at what says that nobody helps. */
function outOfReach(subject: Subject): readonly Report[] {
  const { note, tables, siteOf } = subject;
  const helper = note.aftercare?.helper;
  if (helper === undefined || !isWithoutHelp(note, tables)) return [];
  const far = (note.procedures ?? []).filter(
    (procedure) => leavesWound(procedure, tables) && siteOf(procedure)?.base.outOfReach === true,
  );
  const first = far[0]?.site;
  if (first === undefined) return [];
  const related = far.flatMap(({ site }) =>
    site === undefined ? [] : [{ start: site.start, end: site.end, form: 'wound', args: {} }],
  );
  return [{ at: helper, args: { site: first.text }, related }];
}

/** Whether there is something to care for: tissue was taken, or the wound is covered. */
const leavesWound = ({ method, dressing = [] }: Procedure, tables: Tables): boolean =>
  rowsIn(tables.methods, method)[0]?.takesTissue ??
  dressing.some(({ value }) => tables.dressings.find(value ?? '')?.name !== 'none');

const common = { source: 'common', mark: 'common' } as const;

export const checks: readonly Check[] = [
  {
    code: 'dressing/does-not-hold',
    about: ['dressing'],
    severity: 'information',
    title: 'Tape on hair, in a fold or on a wet place',
    why: 'There tape comes off within hours. A wrap, pressure by hand or ointment alone serves better; on the vulva a textbook has gauze held by underwear.',
    sources: [{ source: 'vulva-textbook', mark: 'Q' }, common],
    messages: {
      main: '{word} on the {site}: {because}. Ointment alone, or a wrap where one can go round, does.',
    },
    find: atSites(loose),
  },
  {
    code: 'dressing/rubbed',
    severity: 'information',
    title: 'An open wound where clothes rub',
    why: 'A waistband, strap, collar or shoe opens a fresh wound again. Where the practice leaves wounds open as a routine (`wound-care` in its file), nothing is said.',
    sources: [common],
    messages: {
      main: 'The wound on the {site} is left uncovered, and {rubs} rubs there. A dressing for the first days spares it.',
    },
    find: atSites(rubbed),
  },
  {
    code: 'dressing/out-of-reach',
    severity: 'information',
    title: 'A wound out of reach, and nobody who helps',
    why: 'On the back, the buttock or the foot many patients can neither see nor reach a wound. Only where the note says that nobody helps (`helper` under `aftercare`) is it told; the handout then asks the patient to settle it.',
    sources: [common],
    messages: {
      main: 'Nobody helps at home, and {site} may be out of reach of the patient. Settle who changes the dressing: a visiting nurse, a visit here, or a dressing that can stay.',
      wound: 'the wound',
    },
    find: outOfReach,
  },
  {
    code: 'dressing/ointment-on-glue',
    about: ['closure'],
    severity: 'warning',
    title: 'Ointment on tissue glue',
    why: 'Ointment softens the film of glue, and the wound opens before it has healed.',
    sources: [{ source: 'tissue-glue-leaflets', mark: 'Q' }],
    messages: {
      main: '{word} on tissue glue loosens its film. Leave the glue bare, or cover it dry.',
      glue: 'tissue glue here',
    },
    find: onGlue,
  },
];
