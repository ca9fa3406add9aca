import type { Allergy, Implant, Note, Patient } from '../../note/generated/types.ts';
import { monthsBetween } from '../../note/values/days.ts';
import type { IsoDate } from '../../note/values/values.ts';
import type { WordTable } from '../../note/words/word-table.ts';
import type { WordRow } from '../../reference/types.ts';
import { saidGeneric, saidGenericList } from '../generic.ts';
import { joined, said, saidAs, saidList, saidYesNo } from '../from-note.ts';
import { phrasesOf } from '../../note/words/phrases.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Fact, SummaryContext } from './model.ts';

/** Who the patient is, which visit this was, and what made it safe or unsafe. */
export function headerOf(note: Note, { tables, today }: SummaryContext): readonly Fact[] {
  const { patient } = note;
  const facts: readonly (readonly [topic: string, label: string, text: string | undefined])[] = [
    ['chart', 'Chart number', said(patient?.id)],
    ['initials', 'Initials', said(patient?.initials)],
    ['visit', 'Visit', said(note.visit)],
    ['as-of', 'As of', today],
    ['age', 'Age', ageOf(note)],
    ['sex', 'Sex', said(patient?.sex)],
    ['weight', 'Weight', joined([said(patient?.weight), said(patient?.weighed)])],
    ['height', 'Height', said(patient?.height)],
    ['allergies', 'Allergies', allergiesOf(patient, tables)],
    ['implants', 'Implants', joined((patient?.implants ?? []).map(implantOf), '; ')],
    ['medications', 'Medications', saidGenericList(patient?.medications, ...medicines(tables))],
    ['conditions', 'Conditions', saidList(patient?.conditions)],
    ['skin', 'Skin', saidList(patient?.skin)],
    ['consent', 'Consent', consentOf(note, tables)],
    ['clinician', 'Clinician', said(note.clinician)],
    ['assistant', 'Assistant', said(note.assistant)],
    ['scribe', 'Scribe', said(note.scribe)],
  ];
  return facts.flatMap(([topic, label, text]) =>
    text === undefined ? [] : [{ topic, text: `${label}: ${text}` }],
  );
}

/** The word on consent where it has no procedure to be in, or forbids one; otherwise each procedure has it. */
function consentOf({ consent, procedures = [] }: Note, { consents }: Tables): string | undefined {
  const words = consent?.value;
  const declined =
    words !== undefined &&
    phrasesOf(consents)
      .assertedIn(words)
      .some(({ name }) => name === 'declined');
  return procedures.length === 0 || declined ? said(consent) : undefined;
}

/** As typed, or worked out from the date of birth; below two years in months. */
function ageOf({ patient, visit }: Note): string | undefined {
  const born = patient?.born?.value;
  const worked =
    patient?.age === undefined && born !== undefined ? ageOn(born, visit?.value?.date) : undefined;
  return joined([worked ?? said(patient?.age), saidAs('born', patient?.born)]);
}

function ageOn(born: IsoDate, day: IsoDate | undefined): string | undefined {
  if (day === undefined || born > day) return undefined;
  const months = monthsBetween(born, day);
  return months < 24 ? `${months} months` : `${Math.floor(months / 12)} years`;
}

const medicines = ({ bloodThinners, otherMedicines, cautions }: Tables): readonly WordTable<WordRow>[] => [
  bloodThinners,
  cautions,
  otherMedicines,
];

/** That nobody asked is worth knowing at once, so it is said. */
function allergiesOf(patient: Patient | undefined, tables: Tables): string {
  return (
    joined(
      (patient?.allergies ?? []).map((one) => allergyOf(one, tables)),
      '; ',
    ) ?? 'not recorded'
  );
}

function allergyOf(
  { to, reaction, tested, tolerates }: Allergy,
  { agents, allergens }: Tables,
): string | undefined {
  const since = saidList(tolerates);
  const more = joined([
    said(reaction),
    saidAs('tested:', tested),
    since === undefined ? undefined : `tolerates ${since}`,
  ]);
  return joined([saidGeneric(to, agents, allergens), more === undefined ? undefined : `(${more})`], ' ');
}

function implantOf({ kind, where, dependent }: Implant): string | undefined {
  return joined([said(kind), said(where), saidYesNo(dependent, 'dependent on it', 'not dependent on it')]);
}
