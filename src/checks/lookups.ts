import { Lookup } from '../note/words/mentions/lookup.ts';
import { Slips } from '../note/words/mentions/slips.ts';
import { wordsRead } from '../note/words/word-table.ts';
import type { WordTable } from '../note/words/word-table.ts';
import type { Tables } from '../practice/tables.ts';
import type { AgentRow } from '../reference/agents.ts';
import type { AllergenRow } from '../reference/allergens.ts';
import type { BloodThinnerRow } from '../reference/blood-thinners.ts';
import type { CautionRow } from '../reference/cautions.ts';
import type { DiagnosisRow } from '../reference/diagnoses.ts';
import type { ImplantRow } from '../reference/implants.ts';
import type { MishapRow } from '../reference/mishaps.ts';
import type { WordRow } from '../reference/types.ts';

/** Something that an entry among the allergies may name. */
type AllergyName =
  | { readonly of: 'agents'; readonly agent: AgentRow }
  | { readonly of: 'allergens'; readonly allergen: AllergenRow };

const once = <Value extends object>(make: (tables: Tables) => Value): ((tables: Tables) => Value) => {
  const made = new WeakMap<Tables, Value>();
  return (tables) => {
    let value = made.get(tables);
    if (value === undefined) made.set(tables, (value = make(tables)));
    return value;
  };
};

const always = (): boolean => true;
const never = (): boolean => false;

export type AllergyRow = WordRow & AllergyName;

/** Anesthetics and allergens, as a text about allergies names them. */
export const allergyNames = once(
  ({ agents, allergens, otherMedicines }) =>
    new Lookup<AllergyRow>('allergy', {
      rows: [
        ...agents.rows.map((agent): AllergyRow => ({ ...wordsOf(agent), of: 'agents', agent })),
        ...allergens.rows.map((allergen): AllergyRow => ({
          ...wordsOf(allergen),
          of: 'allergens',
          allergen,
        })),
      ],
      says: (row) => (row.of === 'allergens' ? answerOf(row.allergen.kind) : undefined),
      lasts: always,
      kin: otherMedicines.rows,
    }),
);

const wordsOf = (row: WordRow): WordRow => ({ name: row.name, synonyms: wordsRead(row).slice(1) });

const answerOf = (kind: string): 'none' | 'doubt' | undefined =>
  kind === 'none' ? 'none' : kind === 'unknown' ? 'doubt' : undefined;

export const implantNames = once(
  ({ implants }) =>
    new Lookup<ImplantRow>('implant', {
      rows: implants.rows,
      says: ({ concern }) => answerOf(concern),
      lasts: never,
    }),
);

/** Habits are asked about beside diseases, and are of another kind. */
const habits: ReadonlySet<string> = new Set(['alcohol use', 'smoking', 'vaping', 'former smoker']);

export const conditionNames = once(
  ({ cautions, otherConditions, cardiacConditions, lengthening, followUp }) =>
    new Lookup<CautionRow>('condition', {
      rows: cautions.rows.filter(({ kind }) => kind === 'condition'),
      lasts: ({ lasts }) => lasts,
      kin: [
        ...otherConditions.rows,
        ...cardiacConditions.rows,
        ...lengthening.rows,
        ...followUp.scarRisks.rows,
      ].filter(({ name }) => !habits.has(name)),
    }),
);

/** Diseases of the heart, which bound the epinephrine of a visit. */
export const cardiacNames = once(
  ({ cardiacConditions, otherConditions }) =>
    new Lookup<WordRow>('condition', {
      rows: cardiacConditions.rows,
      lasts: always,
      kin: otherConditions.rows.filter(({ name }) => !habits.has(name)),
    }),
);

export const thinnerNames = once(
  ({ bloodThinners, otherMedicines }) =>
    new Lookup<BloodThinnerRow>('medicine', {
      rows: bloodThinners.rows,
      lasts: never,
      kin: otherMedicines.rows,
    }),
);

export const medicineNames = once(
  ({ cautions, otherMedicines }) =>
    new Lookup<CautionRow>('medicine', {
      rows: cautions.rows.filter(({ kind }) => kind === 'medicine'),
      lasts: never,
      kin: otherMedicines.rows,
    }),
);

/** What a text may say went wrong. */
export const mishapNames = once(
  ({ mishaps, noMishaps }) => new Lookup<MishapRow>('event', { rows: mishaps, lasts: never, kin: noMishaps }),
);

/** Misspelt names of dangers, as free texts about the patient have them. */
export const slipsOf = once(
  ({ agents, allergens, bloodThinners, cardiacConditions, cautions, implants, ...others }) =>
    new Slips({
      names: [agents, allergens, bloodThinners, cardiacConditions, cautions, implants].flatMap(({ rows }) =>
        rows.filter(isDanger).flatMap(wordsRead),
      ),
      others: [others.otherConditions, others.otherMedicines, allergens].flatMap(({ rows }) =>
        rows.flatMap((row: WordRow) => wordsRead(row)),
      ),
    }),
);

/** Whether a row is more than an answer, or the name of what is not used here. */
const isDanger = (row: WordRow & { readonly kind?: string; readonly concern?: string }): boolean =>
  !['none', 'unknown', 'irrelevant'].includes(row.kind ?? '') &&
  !['none', 'unknown'].includes(row.concern ?? '');

const usedNames = new WeakMap<WordTable<WordRow>, Lookup<WordRow>>();

/** The things of a table that a text may say were used; made once for each table. */
export function namesUsed<Row extends WordRow>(table: WordTable<Row>): Lookup<Row> {
  const known = usedNames.get(table) as Lookup<Row> | undefined;
  if (known !== undefined) return known;
  const made = new Lookup<Row>('use', {
    rows: table.rows,
    says: ({ name }) => (name === 'none' ? 'none' : undefined),
    lasts: never,
  });
  usedNames.set(table, made as unknown as Lookup<WordRow>);
  return made;
}

/** The diseases that a question may ask about. */
export const diseaseNames = once(
  ({ diagnoses }) => new Lookup<DiagnosisRow>('condition', { rows: diagnoses.rows, lasts: never }),
);

/** Some places of the body by the words that a note has for them. */
export const placeNames = (names: readonly string[]): Lookup<WordRow> =>
  new Lookup<WordRow>('condition', { rows: names.map((name) => ({ name, synonyms: [] })), lasts: never });
