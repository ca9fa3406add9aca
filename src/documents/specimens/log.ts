import { safeJson } from '../safe-json.ts';
import type { Note, Procedure, Specimen } from '../../note/generated/types.ts';
import type { IsoDate } from '../../note/values/values.ts';
import type { Tables } from '../../practice/tables.ts';
import { csvOf, type CsvLook } from '../csv.ts';
import type { Format, Records } from '../format.ts';
import { notReadJson, notReadText, type NotRead } from '../not-read.ts';
import { plain } from '../one-line.ts';
import { joined, said, saidList } from '../from-note.ts';
import { rowsIn } from '../../note/words/understood.ts';

/** Where a specimen is: it left, it is still here, it was not to be sent, or the note says nothing of one. */
export type SpecimenState = 'sent' | 'not sent yet' | 'not to be sent' | 'not recorded';

export interface LogRow {
  readonly note: string;
  readonly patient: string | undefined;
  readonly site: string | undefined;
  readonly method: string | undefined;
  readonly label: string | undefined;
  readonly medium: string | undefined;
  readonly tests: string | undefined;
  readonly laboratory: string | undefined;
  readonly requisition: string | undefined;
  readonly sent: string | undefined;
  readonly state: SpecimenState;
}

/** The specimens of one day, and what was counted. */
export interface SpecimenLog {
  readonly on: IsoDate;
  readonly rows: readonly LogRow[];
  /** Procedures of the day by method. */
  readonly methods: ReadonlyMap<string, number>;
  /** The practice's own codes. */
  readonly codes: ReadonlyMap<string, number>;
  /** Notes that could not be looked at. */
  readonly notRead: readonly NotRead[];
}

/** A note with its path, as the log needs it. */
export interface LoggedNote {
  readonly path: string;
  readonly note: Note;
  readonly tables: Tables;
}

/** What was taken on a day, container by container. */
export function specimenLog(
  notes: readonly LoggedNote[],
  on: IsoDate,
  notRead: readonly NotRead[] = [],
): SpecimenLog {
  const rows: LogRow[] = [];
  const methods = new Map<string, number>();
  const codes = new Map<string, number>();
  for (const { path, note, tables } of notes) {
    if (note.visit?.value?.date !== on) continue;
    for (const procedure of note.procedures ?? []) {
      const method = methodOf(procedure, tables);
      count(methods, method ?? 'method not recorded');
      for (const code of procedure.codes ?? []) count(codes, said(code));
      rows.push(...procedureRows(path, note, procedure, tables));
    }
  }
  return { on, rows, methods: sorted(methods), codes: sorted(codes), notRead };
}

/** Several logs of one day as one. */
export function logsTogether(on: IsoDate, logs: readonly SpecimenLog[]): SpecimenLog {
  return {
    on,
    rows: logs.flatMap(({ rows }) => rows),
    methods: summed(logs.map(({ methods }) => methods)),
    codes: summed(logs.map(({ codes }) => codes)),
    notRead: logs.flatMap(({ notRead }) => notRead),
  };
}

function summed(all: readonly ReadonlyMap<string, number>[]): ReadonlyMap<string, number> {
  const sums = new Map<string, number>();
  for (const counts of all) for (const [word, times] of counts) sums.set(word, (sums.get(word) ?? 0) + times);
  return sorted(sums);
}

const methodOf = ({ method }: Procedure, { methods }: Tables): string | undefined =>
  (method?.value === undefined ? undefined : methods.find(method.value)?.name) ?? said(method);

function count(counts: Map<string, number>, word: string | undefined): void {
  if (word !== undefined) counts.set(word, (counts.get(word) ?? 0) + 1);
}

const sorted = (counts: ReadonlyMap<string, number>): ReadonlyMap<string, number> =>
  new Map([...counts].sort(([a], [b]) => (a < b ? -1 : 1)));

function procedureRows(path: string, note: Note, procedure: Procedure, tables: Tables): readonly LogRow[] {
  const method = methodOf(procedure, tables);
  const common = { note: path, patient: said(note.patient?.id), site: said(procedure.site), method };
  const empty = {
    ...{ label: undefined, medium: undefined, tests: undefined },
    ...{ laboratory: undefined, requisition: undefined, sent: undefined },
  };
  if (procedure.specimen === undefined) {
    const takes = rowsIn(tables.methods, procedure.method)[0]?.takesTissue;
    return takes === true ? [{ ...common, ...empty, state: 'not recorded' }] : [];
  }
  return procedure.specimen.map((specimen) => ({
    ...common,
    label: said(specimen.label),
    medium: said(specimen.medium),
    tests: saidList(specimen.tests),
    laboratory: said(specimen.laboratory),
    requisition: said(specimen.requisition),
    sent: said(specimen.sent),
    state: stateOf(specimen),
  }));
}

function stateOf({ notSent, sent, results }: Specimen): SpecimenState {
  if (notSent !== undefined && !notSent.pending) return 'not to be sent';
  return sent?.value !== undefined ||
    results?.some(({ received, diagnosis }) => (received ?? diagnosis)?.value !== undefined) === true
    ? 'sent'
    : 'not sent yet';
}

const states: readonly SpecimenState[] = ['sent', 'not sent yet', 'not to be sent', 'not recorded'];

const tally = ({ rows }: SpecimenLog): ReadonlyMap<SpecimenState, number> =>
  new Map(states.map((state) => [state, rows.filter((row) => row.state === state).length]));

/** The log as text: each container, then what was taken against what left, and the counts. */
function logText(log: SpecimenLog): string {
  if (log.rows.length === 0 && log.methods.size === 0)
    return `No specimens and no procedures on ${log.on}.\n`;
  const rows = log.rows.map((row) => {
    const words = joined([
      row.label === undefined ? 'no label' : `specimen ${row.label}`,
      row.site ?? 'site not recorded',
      row.method,
      row.medium === undefined ? undefined : `in ${row.medium}`,
      row.tests,
      row.laboratory === undefined ? undefined : `to ${row.laboratory}`,
      row.requisition === undefined ? undefined : `request ${row.requisition}`,
      row.sent === undefined ? row.state : `sent ${row.sent}`,
    ]);
    return `  ${plain(`${row.patient ?? 'no chart number'}: ${words ?? ''}`)}\n`;
  });
  const counts = tally(log);
  const containers = (counts.get('sent') ?? 0) + (counts.get('not sent yet') ?? 0);
  const taken = `Containers to send: ${containers}. ${states.map((state) => `${state}: ${counts.get(state) ?? 0}`).join(', ')}.`;
  return `Specimens of ${log.on}\n\n${rows.join('')}\n${taken}\n${countsText('By method', log.methods)}${countsText('By code', log.codes)}`;
}

const countsText = (name: string, counts: ReadonlyMap<string, number>): string =>
  counts.size === 0
    ? ''
    : `${name}: ${[...counts].map(([word, times]) => `${plain(word)} ${times}`).join(', ')}.\n`;

const columns = [
  'patient',
  'site',
  'method',
  'label',
  'medium',
  'tests',
  'laboratory',
  'requisition',
  'sent',
  'state',
  'note',
] as const satisfies readonly (keyof LogRow)[];

/** The containers as a table for a spreadsheet. */
const logCsv = ({ rows }: SpecimenLog, look?: CsvLook): string =>
  csvOf(
    columns,
    rows.map((row) => columns.map((column) => row[column])),
    ['patient', 'label', 'requisition'],
    look,
  );

const entryOf = (row: LogRow): object =>
  Object.fromEntries(['note', ...columns.slice(0, -1)].map((key) => [key, row[key as keyof LogRow] ?? null]));

const countsOf = (log: SpecimenLog): object => ({
  states: Object.fromEntries(tally(log)),
  methods: Object.fromEntries(log.methods),
  codes: Object.fromEntries(log.codes),
});

/** The log as records; the counts are of these specimens alone, and can be added up. */
export const logData = (log: SpecimenLog): Records<'specimens' | 'counts' | 'notRead'> => ({
  specimens: log.rows.map(entryOf),
  counts: [countsOf(log)],
  notRead: notReadJson(log.notRead),
});

/** The log as data. */
const logJson = (log: SpecimenLog): string =>
  `${safeJson(
    {
      wheal: 1,
      on: log.on,
      notRead: notReadJson(log.notRead),
      specimens: log.rows.map(entryOf),
      counts: countsOf(log),
    },
    2,
  )}\n`;

/** The forms of the log, the usual one first. */
export const logFormats: Readonly<
  Record<'text' | 'csv' | 'json', Format<[log: SpecimenLog, look?: CsvLook]>>
> = {
  text: { write: (log) => `${logText(log)}${notReadText(log.notRead)}`, ending: 'txt', title: 'Text' },
  csv: { write: logCsv, ending: 'csv', title: 'Table' },
  json: { write: logJson, ending: 'json', title: 'JSON' },
};
