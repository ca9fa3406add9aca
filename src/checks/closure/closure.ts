import type { Closure, Procedure } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';
import type { MaterialRow } from '../../reference/materials.ts';
import { isAbsent } from '../absent.ts';
import { isProcedureIncomplete } from '../complete.ts';
import type { Check, Report } from '../check.ts';
import { rowsIn } from '../words.ts';

const material = (closure: Closure, tables: Tables): MaterialRow | undefined =>
  rowsIn(tables.materials, closure.material)[0];

const isDeep = ({ layer }: Closure, tables: Tables): boolean =>
  rowsIn(tables.layers, layer)[0]?.name === 'deep';

/** The layers whose stitches have to come out: not the deep ones, and not what is absorbed. */
const toRemove = ({ closure = [] }: Procedure, tables: Tables): readonly Closure[] =>
  closure.filter((one) => !isDeep(one, tables) && material(one, tables)?.absorbable !== true);

/** Stitches out against stitches in, where both are counted in full. */
function counted(procedure: Procedure, tables: Tables): Report | undefined {
  const out = procedure.suturesOut?.count;
  const layers = toRemove(procedure, tables).filter(({ count }) => count !== undefined);
  const inside = layers.map(({ count }) => count?.value);
  if (out?.value === undefined || inside.length === 0) return undefined;
  let placed = 0;
  for (const count of inside) {
    if (count === undefined) return undefined;
    placed += count;
  }
  if (out.value === placed) return undefined;
  return {
    at: out,
    form: out.value > placed ? 'more' : 'fewer',
    args: { out: out.value, placed, left: placed - out.value },
    related: layers.flatMap(({ count }) =>
      count === undefined ? [] : [{ start: count.start, end: count.end, form: 'placed', args: {} }],
    ),
  };
}

/** A day for taking out stitches where every one of them is absorbed. */
function needless(procedure: Procedure, tables: Tables): Report | undefined {
  const { closure = [], suturesDue } = procedure;
  if (suturesDue?.value === undefined) return undefined;
  const rows = closure.map((one) => material(one, tables));
  const absorbed = rows.length > 0 && rows.every((row) => row?.absorbable === true);
  return absorbed
    ? { at: suturesDue, args: { material: rows.map((row) => row?.name).join(', ') } }
    : undefined;
}

const format = { source: 'format', mark: 'format' } as const;

export const checks: readonly Check[] = [
  {
    code: 'closure/missing',
    when: isProcedureIncomplete,
    misses: ({ form }) => (form === 'main' ? 'closure' : undefined),
    severity: 'warning',
    title: 'A punch or an excision with no word on closure',
    why: 'Stitches that nobody recorded stay in. A punch may be left open, but the note should say so.',
    sources: [{ source: 'punch-closure-2005', mark: 'Q' }, format],
    messages: {
      main: 'Nothing is said about how the wound was closed ({method}). Write `closure`: the suture, second intention, or `none`.',
      dated:
        'Stitches have a date here, and nothing is said about how the wound was closed ({method}). Write `closure`, or take the date away if there are no stitches.',
    },
    find: (subject) =>
      (subject.note.procedures ?? []).flatMap((procedure) => {
        const [row] = rowsIn(subject.tables.methods, procedure.method);
        if (row?.wantsClosure !== true || !isAbsent(subject, procedure, 'closure')) return [];
        const args = { method: row.name };
        const { suturesDue: dated, head } = procedure;
        return [dated?.value === undefined ? { at: head, args } : { at: dated, form: 'dated', args }];
      }),
  },
  {
    code: 'closure/removal-before-visit',
    about: ['sutures-due', 'sutures-out'],
    severity: 'error',
    title: 'Stitches due or out before they were put in',
    why: 'Everything that is due later is reckoned from these dates.',
    sources: [format],
    messages: {
      due: 'The stitches are due on {date}, before the visit on {visit}. Check both dates.',
      out: 'The stitches are said to have been taken out on {date}, before the visit on {visit}. Check both dates.',
      visit: 'the visit',
    },
    find({ note }) {
      const found: Report[] = [];
      const visit = note.visit;
      if (visit?.value === undefined) return found;
      const day = visit.value.date;
      const related = [{ start: visit.start, end: visit.end, form: 'visit', args: {} }];
      for (const { suturesDue, suturesOut } of note.procedures ?? [])
        for (const [form, leaf] of [
          ['due', suturesDue],
          ['out', suturesOut?.on],
        ] as const)
          if (leaf?.value !== undefined && leaf.value < day)
            found.push({ at: leaf, form, args: { date: leaf.value, visit: day }, related });
      return found;
    },
  },
  {
    code: 'closure/stitch-count',
    about: ['sutures-out'],
    severity: 'warning',
    title: 'Stitches out and stitches in do not agree',
    why: 'A stitch that is left behind festers, and is found by whoever counts.',
    sources: [format],
    messages: {
      more: '{out} stitches were taken out, and {placed} put in. Check both numbers.',
      fewer:
        '{out} stitches were taken out of {placed}. If {left} came out before or stayed in, say so; otherwise look again.',
      placed: 'stitches put in',
    },
    find: ({ note, tables }) =>
      (note.procedures ?? [])
        .map((procedure) => counted(procedure, tables))
        .filter((report) => report !== undefined),
  },
  {
    code: 'closure/absorbable-removal',
    about: ['sutures-due'],
    severity: 'information',
    title: 'A day for taking out stitches that are absorbed',
    why: 'Absorbable stitches need no removal, so either the material or the date may be a slip.',
    sources: [{ source: 'suture-chart', mark: 'Q' }],
    messages: {
      main: '{material} is absorbed and need not be taken out. Check the material, or leave out the date.',
    },
    find: ({ note, tables }) =>
      (note.procedures ?? [])
        .map((procedure) => needless(procedure, tables))
        .filter((report) => report !== undefined),
  },
];
