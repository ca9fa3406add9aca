import { rowsIn, rowsSaid } from '../../checks/words.ts';
import type { Allergy, Note } from '../../note/generated/types.ts';
import { plainWord } from '../../note/words/word-table.ts';
import type { Tables } from '../../practice/tables.ts';
import type { DressingRow } from '../../reference/dressings.ts';
import type { Language } from '../../note/words/language.ts';

/** What a patient must not be told to put on a wound. */
export interface Avoided {
  /** Allergens by the names of their table, with what they take in and what is known to cross with them. */
  readonly allergens: ReadonlySet<string>;
  /** Dressings that the list of allergies names. */
  readonly dressings: ReadonlySet<string>;
  /** The entries as typed. */
  readonly words: readonly string[];
  /** Whether nobody knows, or an entry can't be understood: then only petrolatum is proposed. */
  readonly uncertain: boolean;
}

/** What the list of allergies forbids. An intolerance, and what may cross, count too: there is always another ointment. */
export function avoidedBy(note: Note, tables: Tables): Avoided {
  const entries = (note.patient?.allergies ?? []).map(({ to }) => meaningOf(to, tables));
  return {
    allergens: new Set(entries.flatMap(({ allergens }) => allergens)),
    dressings: new Set(entries.flatMap(({ dressings }) => dressings)),
    words: entries.flatMap(({ word }) => (word === '' ? [] : [word])),
    uncertain: entries.length === 0 || entries.some(({ unclear }) => unclear),
  };
}

interface Meaning {
  readonly allergens: readonly string[];
  readonly dressings: readonly string[];
  readonly word: string;
  readonly unclear: boolean;
}

function meaningOf(to: Allergy['to'], tables: Tables): Meaning {
  const rows = rowsIn(tables.allergens, to);
  const dressings = rowsIn(tables.dressings, to);
  const agents = rowsIn(tables.agents, to);
  const substances = rows.filter(({ kind }) => kind === 'substance');
  return {
    allergens: [
      ...substances.flatMap(({ name, covers = [], crosses = [] }) => [
        name,
        ...covers,
        ...crosses.map((crossing) => crossing.to),
      ]),
      ...dressings.flatMap(holds),
    ],
    dressings: dressings.map(({ name }) => name),
    word: rows.some(({ kind }) => kind === 'none' || kind === 'unknown') ? '' : plainWord(to?.value ?? ''),
    unclear:
      rows.some(({ kind }) => kind === 'unknown') || rows.length + dressings.length + agents.length === 0,
  };
}

const holds = ({ contains = [], mayContain = [] }: DressingRow): readonly string[] => [
  ...contains,
  ...mayContain,
];

function isAvoided(text: string, rows: readonly DressingRow[], avoided: Avoided): boolean {
  const word = plainWord(text);
  return (
    rows.some(
      (row) => avoided.dressings.has(row.name) || holds(row).some((name) => avoided.allergens.has(name)),
    ) || avoided.words.some((one) => one.includes(word) || word.includes(one))
  );
}

export type Ointment =
  | { readonly kind: 'none' }
  /** Instead of that of the practice, for the reason given. */
  | { readonly kind: 'exchanged'; readonly name: string | undefined; readonly why: 'allergy' | 'uncertain' }
  | { readonly kind: 'usual'; readonly name: string };

const gentlest = 'petrolatum';
const no = /^(?:none|no|no ointment|nothing)$/i;

/** The practice's ointment, unless this patient may react to it; then petrolatum, or none. */
export function ointmentFor(usual: string, avoided: Avoided, tables: Tables): Ointment {
  if (no.test(usual)) return { kind: 'none' };
  const wanted = usual === '' ? gentlest : usual;
  const rowsOf = (text: string): readonly DressingRow[] => {
    const exact = tables.dressings.find(text);
    return exact === undefined ? rowsSaid(tables.dressings, text) : [exact];
  };
  const rows = rowsOf(wanted);
  const gentle = rows.length === 1 && rows[0]?.name === gentlest;
  const allergy = isAvoided(wanted, rows, avoided);
  if (!allergy && (gentle || !avoided.uncertain)) return { kind: 'usual', name: rows[0]?.name ?? wanted };
  const name = isAvoided(gentlest, rowsOf(gentlest), avoided) ? undefined : gentlest;
  return { kind: 'exchanged', name, why: allergy ? 'allergy' : 'uncertain' };
}

/** The allergens of this patient that ointments hold, in the order of their table. */
export function inOintments({ allergens }: Avoided, tables: Tables): readonly string[] {
  const held = new Set(tables.dressings.rows.flatMap((row) => (row.ointment === true ? holds(row) : [])));
  return tables.allergens.rows
    .map(({ name }) => name)
    .filter((name) => held.has(name) && allergens.has(name));
}

type Words = Readonly<Record<Language, string>>;

const words: ReadonlyMap<string, Words> = new Map([
  ['petrolatum', { en: 'petroleum jelly', es: 'vaselina (petrolato)' }],
  ['lanolin ointment', { en: 'lanolin ointment', es: 'ungüento de lanolina' }],
  ['healing ointment', { en: 'healing ointment', es: 'ungüento para heridas' }],
  ['antibiotic ointment', { en: 'antibiotic ointment', es: 'ungüento antibiótico' }],
  ['double antibiotic ointment', { en: 'double antibiotic ointment', es: 'ungüento antibiótico doble' }],
  ['triple antibiotic ointment', { en: 'triple antibiotic ointment', es: 'ungüento antibiótico triple' }],
  ['bacitracin', { en: 'bacitracin', es: 'bacitracina' }],
  ['neomycin', { en: 'neomycin', es: 'neomicina' }],
  ['polymyxin', { en: 'polymyxin', es: 'polimixina' }],
  ['polymyxin B', { en: 'polymyxin B', es: 'polimixina B' }],
  ['mupirocin', { en: 'mupirocin', es: 'mupirocina' }],
  ['gentamicin', { en: 'gentamicin', es: 'gentamicina' }],
  ['fusidic acid', { en: 'fusidic acid', es: 'ácido fusídico' }],
  ['erythromycin', { en: 'erythromycin', es: 'eritromicina' }],
  ['erythromycin ointment', { en: 'erythromycin ointment', es: 'ungüento de eritromicina' }],
  ['clindamycin', { en: 'clindamycin', es: 'clindamicina' }],
  ['retapamulin', { en: 'retapamulin', es: 'retapamulina' }],
  ['corticosteroid', { en: 'a steroid', es: 'un corticoide' }],
  ['hydrocortisone', { en: 'hydrocortisone', es: 'hidrocortisona' }],
  ['triamcinolone', { en: 'triamcinolone', es: 'triamcinolona' }],
  ['triamcinolone ointment', { en: 'triamcinolone ointment', es: 'ungüento de triamcinolona' }],
  ['silver', { en: 'silver', es: 'plata' }],
  ['silver sulfadiazine', { en: 'silver sulfadiazine', es: 'sulfadiazina de plata' }],
  ['sulfonamide', { en: 'a sulfa drug', es: 'una sulfa' }],
  ['zinc oxide', { en: 'zinc oxide', es: 'óxido de zinc' }],
  ['lanolin', { en: 'lanolin', es: 'lanolina' }],
]);

/** An ointment, or what is in it, in the patient's language; undefined where there is no word for it. */
export const ointmentWords = (name: string, language: Language): string | undefined =>
  words.get(name)?.[language];
