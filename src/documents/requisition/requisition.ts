import type { Note, Procedure, Specimen } from '../../note/generated/types.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import type { Tables } from '../../practice/tables.ts';
import { joined, said, saidAs, saidList, saidYesNo } from '../from-note.ts';
import { placePicture } from '../pictures/place.ts';
import type { Picture } from '../pictures/picture.ts';
import { rowsIn } from '../../note/words/understood.ts';

/** One line of a request: a name and what the note says. */
export interface RequestRow {
  readonly name: string;
  /** Undefined where the note does not say it and the request has to carry it; it is left open, never made up. */
  readonly text: string | undefined;
  /** Where else it is to be had. */
  readonly hint?: string;
}

/** The request for one container, and the label on it. */
export interface Request {
  readonly heading: string;
  readonly rows: readonly RequestRow[];
  readonly label: readonly RequestRow[];
  /** Of the container, from 1: the same on request, label and figure. */
  readonly container: number;
  /** Where it was taken, drawn when it is asked for. */
  readonly place: () => Picture | undefined;
}

/** The requests of one visit. */
export interface Requisition {
  /** Of the practice; empty where it has not said. */
  readonly practice: readonly string[];
  readonly requests: readonly Request[];
  /** Chart number and visit, for the foot of every page. */
  readonly foot: string;
}

/**
 * The request for each specimen that is sent: one for each container, since each goes its own way. What a laboratory
 * needs is in part the name, which stays in the chart: it is left open for the hand or the label printer.
 */
export function requisitionOf(note: Note, tables: Tables): Requisition {
  const sent = (note.procedures ?? []).flatMap((procedure, index) =>
    (procedure.specimen ?? [])
      .filter(({ notSent }) => notSent === undefined || notSent.pending)
      .map((specimen) => ({ procedure, index, specimen })),
  );
  const { name, telephone } = tables.practice;
  return {
    practice: [name, telephone].filter((text) => text !== ''),
    foot:
      joined([
        saidAs('Chart number:', note.patient?.id) ?? 'No chart number',
        saidAs('Visit:', note.visit),
      ]) ?? '',
    requests: sent.map(({ procedure, index, specimen }, at) => ({
      heading: `Container ${at + 1} of ${sent.length}`,
      container: at + 1,
      place: () =>
        placePicture(note, tables, { id: `place-${at + 1}`, only: [index], numberOf: () => at + 1 }),
      rows: requestRows(note, procedure, specimen, tables),
      label: labelRows(note, procedure, specimen),
    })),
  };
}

const name: RequestRow = { name: 'Patient name', text: undefined, hint: 'names stay in the chart' };

/** What the note says; `??` says nothing, and is left open. */
const told = (leaf: Leaf<unknown> | undefined): string | undefined =>
  leaf?.pending === true ? undefined : said(leaf);

const toldAs = (lead: string, leaf: Leaf<unknown> | undefined): string | undefined =>
  leaf?.pending === true ? undefined : saidAs(lead, leaf);

const identifiers = ({ patient }: Note): readonly RequestRow[] => [
  name,
  { name: 'Chart number', text: told(patient?.id) },
  patient?.born === undefined && patient?.age !== undefined
    ? { name: 'Age', text: told(patient.age) }
    : { name: 'Date of birth', text: told(patient?.born) },
];

function requestRows(
  note: Note,
  procedure: Procedure,
  specimen: Specimen,
  tables: Tables,
): readonly RequestRow[] {
  const immunofluorescence = asksFor(specimen, 'direct immunofluorescence', tables);
  return [
    ...identifiers(note),
    { name: 'Sex', text: told(note.patient?.sex) },
    { name: 'Requested by', text: told(note.clinician) },
    { name: 'Collected', text: specimen.collected?.value?.date ?? note.visit?.value?.date },
    { name: 'Time of collection', text: timeOf(specimen) },
    { name: 'Specimen', text: told(specimen.label) },
    { name: 'Site', text: siteOf(procedure) },
    ...(immunofluorescence || procedure.relation !== undefined
      ? [{ name: 'Relation to the lesion', text: told(procedure.relation) }]
      : []),
    ...(immunofluorescence ? [{ name: 'Sun exposure of the site', text: undefined }] : []),
    { name: 'Clinical findings', text: told(procedure.lesion) },
    { name: 'Clinical question', text: told(procedure.question) },
    { name: 'Procedure', text: procedureOf(procedure) },
    ...optional('Orientation', told(specimen.orientation)),
    { name: 'In', text: told(specimen.medium) },
    { name: 'Tests', text: saidList(specimen.tests?.filter(({ pending }) => !pending)) },
    ...optional('Laboratory', told(specimen.laboratory)),
    ...optional('Request number', told(specimen.requisition)),
    ...optional('Same site as specimen', told(procedure.sameAs)),
    ...optional('Remarks', saidList(procedure.remarks?.filter(({ pending }) => !pending))),
  ];
}

/** What is on the container itself, not on its lid: the same words as on the request. */
const labelRows = (note: Note, procedure: Procedure, specimen: Specimen): readonly RequestRow[] => [
  ...identifiers(note),
  { name: 'Specimen', text: told(specimen.label) },
  { name: 'Site', text: told(procedure.site) },
  { name: 'Collected', text: specimen.collected?.value?.date ?? note.visit?.value?.date },
  { name: 'By', text: told(note.clinician) },
  { name: 'In', text: told(specimen.medium) },
];

/** The clock time at which the tissue was taken; undefined where the note does not say it. */
const timeOf = ({ collected }: Specimen): string | undefined =>
  collected?.value?.minutes === undefined ? undefined : said(collected)?.replace(/^\d{4}-\d\d-\d\d[ T]+/, '');

const optional = (name: string, text: string | undefined): readonly RequestRow[] =>
  text === undefined ? [] : [{ name, text }];

const siteOf = ({ site, landmarks, photo }: Procedure): string | undefined =>
  site === undefined
    ? undefined
    : joined([told(site), told(landmarks), saidYesNo(photo, 'photograph taken', 'no photograph')]);

const procedureOf = ({ method, size, depth, margin }: Procedure): string | undefined =>
  joined([told(method), told(size), toldAs('to', depth), toldAs('margin', margin)]);

const asksFor = ({ tests }: Specimen, test: string, tables: Tables): boolean =>
  (tests ?? []).some((leaf) => rowsIn(tables.tests, leaf).some(({ name }) => name === test));
