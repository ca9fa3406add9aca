import type { Report } from '../../note/tree/finding.ts';
import { stitchesOf } from '../../followup/sutures.ts';
import type { Procedure } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';
import type { SiteRegion } from '../../reference/sites.ts';
import type { Check, Subject } from '../check.ts';
import { punchOf } from '../punch.ts';
import { rowsIn } from '../words.ts';

const open: ReadonlySet<string | undefined> = new Set(['none', 'second intention']);

const face: ReadonlySet<SiteRegion> = new Set(['face', 'eye', 'nose', 'ear', 'mouth']);

/** Whether a wound was left open: the note says so, and no stitch stopped the bleeding. */
const isOpen = (procedure: Procedure, tables: Tables): boolean =>
  (procedure.closure ?? []).every(({ how }) => {
    const rows = rowsIn(tables.closures, how);
    return rows.length > 0 && rows.every(({ name }) => open.has(name));
  }) && stitchesOf(procedure, tables) === 'none';

function openPunch(procedure: Procedure, subject: Subject): Report | undefined {
  const { tables } = subject;
  const how = procedure.closure?.[0]?.how;
  const punch = punchOf(procedure, tables);
  if (how === undefined || punch === undefined || punch.mm <= tables.openPunch.face.mm) return undefined;
  if (!isOpen(procedure, tables)) return undefined;
  const { start, end, text } = punch.at;
  const related = [{ start, end, form: 'size', args: {} }];
  if (punch.mm > tables.openPunch.anywhere.mm)
    return { at: how, args: { size: text }, related, rests: tables.openPunch.anywhere };
  const base = subject.siteOf(procedure)?.base;
  if (base === undefined || !face.has(base.region)) return undefined;
  return {
    at: how,
    form: 'face',
    args: { size: text, site: base.name },
    related,
    rests: tables.openPunch.face,
  };
}

export const check: Check = {
  code: 'closure/open-punch',
  severity: 'information',
  title: 'A larger punch left open',
  why: 'In a trial on arm, thigh and back 4 mm wounds looked alike, sutured or open, and of 8 mm the patients liked the sutured ones better; complications were equal. It had no face, where open healing is usual up to 3 mm.',
  sources: [
    { source: 'punch-closure-2005', mark: 'Q' },
    { source: 'common', mark: 'common' },
  ],
  messages: {
    main: 'A punch of {size} left open may scar more visibly than a sutured one: a trial found that at 8 mm, and no difference at 4 mm. If it was intended, accept this.',
    face: 'A punch of {size} on the {site} was left open; on the face that is usual up to 3 mm. If it was intended, accept this.',
    size: 'the punch',
  },
  find: (subject) =>
    (subject.note.procedures ?? [])
      .map((procedure) => openPunch(procedure, subject))
      .filter((report) => report !== undefined),
};
