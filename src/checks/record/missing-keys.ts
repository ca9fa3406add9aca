import type { Severity } from '../../note/tree/finding.ts';
import type { Part } from '../../note/tree/leaf.ts';
import type { Note, Procedure } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';
import type { MethodRow } from '../../reference/methods.ts';
import type { Sourced } from '../../reference/types.ts';
import { isAbsent } from '../absent.ts';
import type { Check, SourcesDiffer } from '../check.ts';
import { rowsIn } from '../words.ts';
import { format } from '../sources.ts';

const whatRequestsNeed: SourcesDiffer = {
  how: 'Asked what a request needs, clinicians name three items and pathologists ten. What laboratories ask for in writing is followed.',
  settings: ['severities'],
};

interface Row {
  readonly code: string;
  /** Any one of these keys will do; the first is the one to put in. */
  readonly keys: readonly string[];
  readonly severity: Severity;
  readonly title: string;
  readonly why: string;
  readonly message: string;
  readonly sources: readonly Sourced[];
  readonly sourcesDiffer?: SourcesDiffer;
}

interface ProcedureRow extends Row {
  /** Where the key has nothing to add. */
  readonly unless?: (procedure: Procedure, tables: Tables) => boolean;
}

const ofPatient: readonly Row[] = [
  {
    code: 'record/missing-age',
    keys: ['born', 'age', 'dob', 'date-of-birth'],
    severity: 'warning',
    title: 'Neither date of birth nor age',
    why: 'Dose limits of children differ from those of adults, and a laboratory asks for the date of birth as an identifier.',
    message: 'The note has neither the date of birth nor the age. Write `born: YYYY-MM-DD`, or `age`.',
    sources: [{ source: 'requisition-guides', mark: 'Q' }, format],
  },
  {
    code: 'record/missing-allergies',
    keys: ['allergies'],
    severity: 'warning',
    title: 'Allergies not asked about',
    why: 'A note without the key says that nobody asked, which is not the same as no allergies. Without it no drug, antiseptic, dressing or suture can be checked.',
    message:
      'Allergies are not recorded, which reads as not asked. Ask, and write what the patient is allergic to, `none` or `unknown`.',
    sources: [{ source: 'time-out-elements', mark: 'Q' }, format],
  },
];

const ofVisit: readonly Row[] = [
  {
    code: 'record/missing-clinician',
    keys: ['clinician'],
    severity: 'warning',
    title: 'Nobody named as clinician',
    why: 'The result goes back to whoever took the sample, and a record says who did the procedure.',
    message: 'The note does not say who did the procedure. Write `clinician` with the name or the initials.',
    sources: [
      { source: 'requisition-guides', mark: 'Q' },
      { source: 'hospital-documentation-guide', mark: 'Q' },
      format,
    ],
  },
  {
    code: 'record/missing-consent',
    keys: ['consent'],
    severity: 'warning',
    title: 'Consent not recorded',
    why: 'Without it nobody can tell later whether the patient agreed, and how.',
    message:
      'Consent is not recorded. Write how it was given: written, verbal or by a guardian; or that it was declined.',
    sources: [{ source: 'time-out-elements', mark: 'Q' }, format],
  },
  {
    code: 'record/missing-time-out',
    keys: ['time-out'],
    severity: 'information',
    title: 'Time-out not recorded',
    why: 'The pause before the first cut, in which patient, site and procedure are said aloud, catches the wrong site and the wrong patient.',
    message: 'No time-out is recorded. If one was held, write its clock time, or `done`.',
    sources: [{ source: 'universal-protocol', mark: 'Q' }, format],
  },
  {
    code: 'record/missing-aftercare',
    keys: ['aftercare'],
    severity: 'information',
    title: 'Aftercare not recorded',
    why: 'Bleeding and infection show at home. The record should say what the patient was given to go by, and in which language.',
    message:
      'Aftercare is not recorded. Write how the instructions were given, such as `given: printed` under `aftercare`.',
    sources: [{ source: 'aftercare-leaflets', mark: 'Q' }, format],
  },
];

const sameLesion = (procedure: Procedure): boolean => procedure.keys.has('same-as');

const nothingSent = ({ specimen = [] }: Procedure): boolean =>
  specimen.length > 0 && specimen.every(({ keys }) => keys.has('not-sent'));

const methodOf = ({ method }: Procedure, tables: Tables): MethodRow | undefined =>
  rowsIn(tables.methods, method)[0];

/** Whether nothing was cut out whose depth could be told: of an unknown method that can't be said. */
const takesNothing = (procedure: Procedure, tables: Tables): boolean =>
  methodOf(procedure, tables)?.takesTissue === false;

const leavesNoWound = (procedure: Procedure, tables: Tables): boolean =>
  methodOf(procedure, tables)?.wound === false;

const ofProcedure: readonly ProcedureRow[] = [
  {
    code: 'record/missing-lesion',
    keys: ['lesion'],
    severity: 'information',
    title: 'The lesion is not described',
    why: 'After the biopsy nobody can see what it was taken from. The pathologist weighs the slide against what was seen.',
    message: 'The lesion is not described. Write its kind, color, size and border.',
    sources: [{ source: 'requisition-guides', mark: 'Q' }, format],
    sourcesDiffer: whatRequestsNeed,
    unless: sameLesion,
  },
  {
    code: 'record/missing-question',
    keys: ['question', 'clinical-question'],
    severity: 'information',
    title: 'No question to the pathologist',
    why: 'Laboratories ask for the clinical information or the differential diagnosis; a slide that is read without it may be read wrongly.',
    message: 'No question to the pathologist is written. Write what the sample should answer.',
    sources: [{ source: 'requisition-guides', mark: 'Q' }, format],
    sourcesDiffer: whatRequestsNeed,
    unless: (procedure, tables) =>
      sameLesion(procedure) ||
      nothingSent(procedure) ||
      ((procedure.specimen ?? []).length === 0 && takesNothing(procedure, tables)),
  },
  {
    code: 'record/missing-depth',
    keys: ['depth'],
    severity: 'information',
    title: 'The depth is not recorded',
    why: 'How deep the sample goes decides whether it can answer the question, and how the wound heals.',
    message:
      'The depth of the sample is not recorded. Write `depth`: epidermis, papillary dermis, mid dermis, deep dermis or subcutis.',
    sources: [{ source: 'operative-report', mark: 'Q' }, format],
    unless: (procedure, tables) => takesNothing(procedure, tables) || leavesNoWound(procedure, tables),
  },
  {
    code: 'record/missing-dressing',
    keys: ['dressing', 'dressings'],
    severity: 'information',
    title: 'No dressing recorded',
    why: 'Whoever sees the wound next wants to know what was on it, and a reaction under tape can only be explained by what is written.',
    message: 'No dressing is recorded. Write what covers the wound, or `none`.',
    sources: [{ source: 'aftercare-leaflets', mark: 'Q' }, format],
    unless: leavesNoWound,
  },
  {
    code: 'record/missing-complications',
    keys: ['complications'],
    severity: 'information',
    title: 'Complications not mentioned',
    why: 'A record that is silent about complications does not say that there were none.',
    message: 'Complications are not recorded. Write what happened, or `none` if nothing was seen.',
    sources: [{ source: 'hospital-documentation-guide', mark: 'Q' }, format],
  },
];

const visitCheck = (row: Row, partOf: (note: Note) => Part | undefined): Check => ({
  ...wordsOf(row),
  find(subject) {
    const part = partOf(subject.note);
    return part !== undefined && isAbsent(subject, part, ...row.keys) ? [{ at: part.head }] : [];
  },
});

const procedureCheck = (row: ProcedureRow): Check => ({
  ...wordsOf(row),
  find: (subject) =>
    (subject.note.procedures ?? [])
      .filter(
        (procedure) =>
          isAbsent(subject, procedure, ...row.keys) && row.unless?.(procedure, subject.tables) !== true,
      )
      .map(({ head }) => ({ at: head })),
});

const wordsOf = ({
  code,
  keys,
  severity,
  title,
  why,
  message,
  sources,
  sourcesDiffer,
}: Row): Omit<Check, 'find'> => ({
  code,
  misses: () => keys[0],
  severity,
  title,
  why,
  sources,
  messages: { main: message },
  ...(sourcesDiffer === undefined ? {} : { sourcesDiffer }),
});

/** What a careful record has, and this note does not mention. */
export const checks: readonly Check[] = [
  ...ofVisit.map((row) => visitCheck(row, (note) => note)),
  ...ofPatient.map((row) => visitCheck(row, (note) => note.patient)),
  ...ofProcedure.map(procedureCheck),
];
