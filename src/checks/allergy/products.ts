import type { Report, Severity } from '../../note/tree/finding.ts';
import { byGravity } from '../../note/tree/severity.ts';
import type { Note, Procedure } from '../../note/generated/types.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import type { WordTable } from '../../note/words/word-table.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Sourced, WordRow } from '../../reference/types.ts';
import type { Check } from '../check.ts';
import { usedIn } from '../patient-texts.ts';
import { rowsIn } from '../words.ts';
import { allergiesOf, entryOf, type Allergies, type Named } from '../allergies.ts';
import { format } from '../sources.ts';

/** A thing that touches the patient, with the allergens in it. */
export interface Product extends WordRow {
  readonly contains?: readonly string[];
  readonly mayContain?: readonly string[];
}

interface Row {
  readonly code: string;
  readonly title: string;
  readonly why: string;
  readonly sources: readonly Sourced[];
  /** Where the things of a procedure are named, and the table that knows them. */
  readonly things: (procedure: Procedure, tables: Tables) => Iterable<Thing>;
  /** What later events may mention. */
  readonly later: (tables: Tables) => WordTable<Product & Sourced>;
}

interface Thing {
  readonly leaf: Leaf<string>;
  readonly table: WordTable<Product & Sourced>;
}

export interface Conflict {
  readonly severity: Severity;
  readonly form: 'main' | 'itself' | 'itself-eased' | 'eased' | 'may' | 'crosses' | 'akin';
  readonly product: string;
  readonly substance: string;
  readonly named: Named;
}

/** What is between a product and the patient's allergies, the gravest of it. */
export function conflictOf(product: Product, allergies: Allergies): Conflict | undefined {
  const certain = gravest(product, product.contains, true, allergies);
  const possible = gravest(product, product.mayContain, false, allergies);
  return graver(certain, possible);
}

function gravest(
  product: Product,
  substances: readonly string[] | undefined,
  certain: boolean,
  allergies: Allergies,
): Conflict | undefined {
  let worst: Conflict | undefined;
  for (const substance of substances ?? [])
    worst = graver(worst, conflictWith(product, substance, certain, allergies));
  return worst;
}

/** The graver of two; the first of equals. */
function graver(one: Conflict | undefined, other: Conflict | undefined): Conflict | undefined {
  if (one === undefined || other === undefined) return one ?? other;
  return byGravity(other.severity, one.severity) < 0 ? other : one;
}

function conflictWith(
  product: Product,
  substance: string,
  certain: boolean,
  { substances, crossed }: Allergies,
): Conflict | undefined {
  const named = substances.get(substance);
  if (named !== undefined) return conflictNamed(product, substance, certain, named);
  const cross = crossed.get(substance);
  const ease = cross?.named.ease();
  if (cross === undefined || (ease !== undefined && ease !== 'open')) return undefined;
  const known = cross.crossing.mark === 'Q' || cross.crossing.mark === 'Q2';
  const severity = certain && known ? 'warning' : 'information';
  const form = known ? 'crosses' : 'akin';
  return { product: product.name, substance, named: cross.named, severity, form };
}

function conflictNamed({ name }: Product, substance: string, certain: boolean, named: Named): Conflict {
  const eased = named.mild || named.ease() !== undefined;
  const severity = certain && !eased ? 'error' : 'warning';
  const isItself = name.toLowerCase() === substance.toLowerCase();
  const certainly = isItself ? (eased ? 'itself-eased' : 'itself') : eased ? 'eased' : 'main';
  return { product: name, substance, named, severity, form: certain ? certainly : 'may' };
}

/** Whether the very product was tolerated since, and is another than the one that the entry names. */
const isTolerated = (
  row: Product & Sourced,
  table: WordTable<Product & Sourced>,
  { tolerates, leaf }: Named,
): boolean =>
  !rowsIn(table, leaf).includes(row) && tolerates?.some((one) => rowsIn(table, one).includes(row)) === true;

function conflicts(things: Iterable<Thing>, allergies: Allergies): readonly Report[] {
  const found: Report[] = [];
  for (const { leaf, table } of things)
    for (const row of rowsIn(table, leaf)) {
      const conflict = conflictOf(row, allergies);
      if (conflict === undefined) continue;
      const { severity, form, product, substance, named } = conflict;
      if (severity !== 'error' && isTolerated(row, table, named)) continue;
      const args = { product, substance, allergy: named.word };
      found.push({ at: leaf, severity, form, args, related: entryOf(named), rests: row });
      break;
    }
  return found;
}

const each = (
  leaves: readonly Leaf<string>[] | undefined,
  table: WordTable<Product & Sourced>,
): readonly Thing[] => (leaves ?? []).map((leaf) => ({ leaf, table }));

const rows: readonly Row[] = [
  {
    code: 'allergy/hemostatic',
    title: 'Something to stop bleeding to which the patient is allergic',
    why: 'What is pressed into a wound stays in contact longer than what is wiped over skin. Chitosan is made of the shells of shrimp or crab: ten patients allergic to shellfish tolerated one dressing of it, so that it is asked about and no error.',
    sources: [{ source: 'chitosan-shellfish-2011', mark: 'Q' }, format],
    things: ({ hemostasis }, tables) => each(hemostasis, tables.hemostasis),
    later: ({ hemostasis }) => hemostasis,
  },
  {
    code: 'allergy/preparation',
    title: 'A skin preparation to which the patient is allergic',
    why: 'Chlorhexidine can cause anaphylaxis from skin alone. Shellfish and contrast media do not cross-react with povidone-iodine; a bare "iodine" does not say which was meant.',
    sources: [{ source: 'chlorhexidine-alcohol-label', mark: 'Q' }, format],
    things: ({ preparation }, tables) => each(preparation, tables.preparations),
    later: ({ preparations }) => preparations,
  },
  {
    code: 'allergy/dressing',
    title: 'A dressing or ointment to which the patient is allergic',
    why: 'Neomycin and bacitracin are among the commonest contact allergens, and people react to both together. Wounds heal as well under petrolatum. Reactions to tape are usually rashes, so they are a warning.',
    sources: [
      { source: 'nacdg-2005', mark: 'Q' },
      { source: 'jama-1996-ointment', mark: 'Q' },
      { source: 'dermatology-nursing-antibiotics', mark: 'Q' },
      { source: 'hydrocolloid-1997', mark: 'Q' },
      { source: 'us-label-triple-antibiotic', mark: 'Q' },
      { source: 'us-label-silver-sulfadiazine', mark: 'Q' },
      { source: 'latex-products', mark: 'Q' },
      { source: 'benzoin-2003', mark: 'Q' },
      { source: 'benzoin-1983', mark: 'Q' },
      format,
    ],
    things: ({ dressing }, tables) => each(dressing, tables.dressings),
    later: ({ dressings }) => dressings,
  },
  {
    code: 'allergy/closure',
    title: 'A closure or suture to which the patient is allergic',
    why: 'A stitch, a staple or glue stays in contact for days or weeks. The text of tissue glue rules it out in formaldehyde allergy too, and one in three people who react to it react to acrylates.',
    sources: [
      { source: 'tissue-glue-reference', mark: 'Q' },
      { source: 'cyanoacrylate-patch-tests', mark: 'Q' },
      { source: 'steel-sutures', mark: 'Q' },
      { source: 'metal-skin-clips', mark: 'Q' },
      { source: 'glycolide-sutures', mark: 'M' },
      format,
    ],
    things({ closure = [] }, tables) {
      const found: Thing[] = [];
      for (const { how, material } of closure) {
        if (how !== undefined) found.push({ leaf: how, table: tables.closures });
        if (material === undefined) continue;
        // Glue is written as a material too.
        const isMaterial = rowsIn(tables.materials, material).length > 0;
        found.push({ leaf: material, table: isMaterial ? tables.materials : tables.closures });
      }
      return found;
    },
    later: ({ materials }) => materials,
  },
];

/** What remarks and events say was put on, with their exact words. */
function toldOf(
  { procedures = [], events = [], remarks = [] }: Note,
  table: WordTable<Product & Sourced>,
): readonly Thing[] {
  const leaves = [
    ...procedures.flatMap((one) => [one.complications, ...(one.remarks ?? [])]),
    ...remarks,
    ...events.map(({ action }) => action),
  ];
  return leaves.flatMap((leaf) =>
    leaf === undefined ? [] : usedIn(leaf, table).map((used) => ({ leaf: used.leaf, table })),
  );
}

const checkOf = ({ things, later, ...row }: Row): Check => ({
  ...row,
  severity: 'error',
  alternatives: { readAs: [] },
  messages: {
    main: '{product} contains {substance}, and the patient is listed as allergic to {allergy}. Choose another; if it was used, tell the clinician and the patient.',
    itself:
      'The patient is listed as allergic to {allergy}: {product}. Choose another; if it was used, tell the clinician and the patient.',
    'itself-eased':
      'The list of allergies names {allergy}: {product}. Ask what happened, and choose another if in doubt.',
    eased:
      '{product} contains {substance}, and the list of allergies names {allergy}. Ask what happened, and choose another if in doubt.',
    may: 'Some products called {product} contain {substance}, and the patient is listed as allergic to {allergy}. Read the package, and name the product exactly.',
    crosses:
      '{product} contains {substance}; people allergic to {allergy} often react to it too. Choose another if in doubt.',
    akin: '{product} contains {substance}, which is related to {allergy}; no source was found on whether people who react to one react to the other. Choose another if in doubt.',
    entry: 'the patient is listed as allergic to {allergy} here',
  },
  find(subject) {
    const allergies = allergiesOf(subject);
    if (!allergies.any) return [];
    const { note, tables } = subject;
    const found: Report[] = [];
    for (const procedure of note.procedures ?? [])
      for (const report of conflicts(things(procedure, tables), allergies)) found.push(report);
    return [...found, ...conflicts(toldOf(note, later(tables)), allergies)];
  },
});

export const checks: readonly Check[] = rows.map(checkOf);
