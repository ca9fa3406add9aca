import { agents, type AgentRow } from '../../../src/reference/agents.ts';
import { allergens, type AllergenRow } from '../../../src/reference/allergens.ts';
import { cautions, type CautionRow } from '../../../src/reference/cautions.ts';
import { dressings } from '../../../src/reference/dressings.ts';
import { hemostasis } from '../../../src/reference/hemostasis.ts';
import { implants } from '../../../src/reference/implants.ts';
import { preparations } from '../../../src/reference/preparations.ts';
import type { WordRow } from '../../../src/reference/types.ts';

/** The tables in which dangers are named. */
export type Kind = 'anesthetic' | 'allergen' | 'implant' | 'condition' | 'medicine';

/** What was done in the note, so that the danger matters. */
export interface Exposure {
  readonly site: string;
  /** Whether the patient is an infant, to whom some medicines are a danger that they are not to an adult. */
  readonly infant: boolean;
  /** Whether even the plain entry is no more than information. */
  readonly mild: boolean;
  /** Lines of the procedure, without indentation. */
  readonly lines: readonly string[];
  /** Checks of which one must fire when the danger is said. */
  readonly codes: readonly string[];
}

/** One row of a table of dangers, with the note in which it is one. */
export interface Thing extends Exposure {
  readonly kind: Kind;
  readonly row: string;
  readonly words: readonly string[];
  /** Whether `history of` it means that the patient still has it. */
  readonly lasts: boolean;
  /** Whether it is a tumor that is gone when it was taken out and cured. */
  readonly tumor: boolean;
}

const back = 'left upper back';
const given = (agent: string, strength: string, more = ''): string =>
  `anesthetic: {agent: ${agent}, concentration: ${strength}, volume: 1 mL${more}}`;
const cream = (agent: string): string => `anesthetic: {agent: ${agent}, amount: 1 g, area: 10 cm2}`;
const withEpinephrine = (volume: string): string =>
  `anesthetic: {agent: lidocaine, concentration: 1%, epinephrine: "1:100,000", volume: ${volume}}`;

const exposure = (codes: string, ...lines: readonly string[]): Exposure => ({
  site: back,
  infant: false,
  mild: false,
  lines,
  codes: codes.split(' '),
});

const anesthetic = (line: string): Exposure => exposure('allergy/agent allergy/same-class', line);
const preservative = (line: string): Exposure => exposure('allergy/preservative', line);
const dressing = (word: string): Exposure => exposure('allergy/dressing', `dressing: ${word}`);
const preparation = (word: string): Exposure => exposure('allergy/preparation', `preparation: ${word}`);
const hemostatic = (word: string): Exposure => exposure('allergy/hemostatic', `hemostasis: ${word}`);
const closed = (how: string): Exposure => exposure('allergy/closure', `closure: ${how}`);
const suture = (material: string): Exposure => closed(`{material: ${material}, size: 4-0, count: 2}`);

const amide = anesthetic(given('lidocaine', '1%'));
const ester = anesthetic(given('chloroprocaine', '1%'));
const methylparaben = preservative(given('lidocaine', '1%', ', preservative-free: no'));
const tripleOintment = dressing('triple antibiotic ointment');

/** What the patient was exposed to, for allergens of which the tables of products do not say it plainly. */
const exposures: Readonly<Record<string, Exposure>> = {
  'local anesthetics': amide,
  'amide anesthetics': amide,
  'ester anesthetics': ester,
  benzocaine: ester,
  cocaine: ester,
  PABA: ester,
  methylparaben,
  preservatives: methylparaben,
  'benzyl alcohol': preservative('anesthetic: {agent: bacteriostatic saline, volume: 1 mL}'),
  sulfite: exposure('allergy/sulfite', withEpinephrine('1 mL')),
  epinephrine: exposure('allergy/epinephrine', withEpinephrine('1 mL')),
  adhesive: dressing('paper tape'),
  acrylates: dressing('cloth tape'),
  methacrylates: closed('tissue glue'),
  formaldehyde: closed('tissue glue'),
  silicone: dressing('silicone tape'),
  latex: dressing('elastic wrap'),
  benzoin: dressing('[benzoin, gauze]'),
  mastic: dressing('[liquid adhesive, gauze]'),
  colophony: dressing('[benzoin, gauze]'),
  'balsam of Peru': dressing('[benzoin, gauze]'),
  fragrance: dressing('[benzoin, gauze]'),
  cyanoacrylate: closed('tissue glue'),
  lanolin: dressing('lanolin ointment'),
  petrolatum: dressing('[petrolatum, gauze]'),
  'zinc oxide': dressing('zinc oxide'),
  honey: dressing('honey dressing'),
  bacitracin: dressing('bacitracin'),
  neomycin: tripleOintment,
  polymyxin: dressing('double antibiotic ointment'),
  'topical antibiotics': tripleOintment,
  mupirocin: dressing('mupirocin'),
  gentamicin: dressing('gentamicin'),
  'fusidic acid': dressing('fusidic acid'),
  silver: hemostatic('silver nitrate'),
  sulfonamide: dressing('silver sulfadiazine'),
  'povidone-iodine': preparation('povidone-iodine'),
  iodine: preparation('povidone-iodine'),
  chlorhexidine: preparation('chlorhexidine'),
  alcohol: preparation('isopropyl alcohol'),
  'benzalkonium chloride': preparation('benzalkonium chloride'),
  triclosan: suture('antibacterial polyglactin'),
  aluminum: hemostatic('aluminum chloride'),
  iron: hemostatic('ferric subsulfate'),
  gelatin: hemostatic('gelatin sponge'),
  collagen: hemostatic('collagen'),
  'tranexamic acid': hemostatic('tranexamic acid'),
  nylon: suture('nylon'),
  polypropylene: suture('polypropylene'),
  polyester: suture('polyester'),
  silk: suture('silk'),
  polyglactin: suture('polyglactin'),
  'polyglycolic acid': suture('polyglycolic acid'),
  polydioxanone: suture('polydioxanone'),
  poliglecaprone: suture('poliglecaprone'),
  gut: suture('plain gut'),
  chromium: suture('chromic gut'),
  'absorbable sutures': suture('polyglactin'),
  nickel: closed('staples'),
};

const wordsOf = ({ name, synonyms }: WordRow): readonly string[] => [name, ...synonyms];

function agentExposure({ name, form, strengths }: AgentRow): Exposure {
  if (form === 'cream') return anesthetic(cream(name));
  if (form === 'injected') return anesthetic(given(name, `${(strengths[0] ?? 10) / 10}%`));
  return anesthetic(
    form === 'spray' ? `anesthetic: {agent: ${name}}` : `anesthetic: {agent: ${name}, volume: 1 mL}`,
  );
}

const thing = (kind: Kind, row: WordRow, how: Exposure, lasts = true): Thing => ({
  ...how,
  kind,
  row: row.name,
  words: wordsOf(row),
  lasts,
  tumor: row.name === 'pheochromocytoma',
});

type Product = WordRow & { readonly contains?: readonly string[] };

/** The product that holds an allergen, of those used on the skin. */
function holding(allergen: string): Exposure | undefined {
  const holds = ({ contains = [] }: Product): boolean => contains.includes(allergen);
  const named = (rows: readonly Product[]): string | undefined => rows.find(holds)?.name;
  const [worn, wiped, pressed] = [named(dressings), named(preparations), named(hemostasis)];
  if (worn !== undefined) return dressing(worn);
  if (wiped !== undefined) return preparation(wiped);
  return pressed === undefined ? undefined : hemostatic(pressed);
}

/** What shows that an allergy matters: undefined where nothing used on the skin holds the allergen. */
function allergenExposure({ name, covers = [] }: AllergenRow): Exposure | undefined {
  return (
    exposures[name] ??
    holding(name) ??
    covers.map((covered) => exposures[covered] ?? holding(covered)).find((one) => one !== undefined)
  );
}

const allergenThings = allergens.flatMap((row) => {
  const how = row.kind === 'irrelevant' ? undefined : allergenExposure(row);
  return how === undefined ? [] : [thing('allergen', row, how)];
});

const current = exposure('device/electrosurgery device/unknown-implant', 'hemostasis: electrosurgery');

const implantThings = implants
  .filter(
    ({ concern }) =>
      concern === 'pacemaker' ||
      concern === 'forbidden' ||
      concern === 'cochlear' ||
      concern === 'unruled' ||
      concern === 'ask',
  )
  .map((row) =>
    thing(
      'implant',
      row,
      { ...current, site: row.concern === 'cochlear' ? 'left cheek' : back, mild: row.concern === 'ask' },
      false,
    ),
  );

/** The note in which a condition or medicine is a danger; undefined where no check is about it. */
function cautionExposure({ epinephrine, endArtery, methemoglobin }: CautionRow): Exposure | undefined {
  if (endArtery !== undefined)
    return { ...exposure('dose/epinephrine-end-artery', withEpinephrine('1 mL')), site: 'right ring finger' };
  if (epinephrine !== undefined)
    return {
      ...exposure('dose/epinephrine-care', withEpinephrine(epinephrine.from === 'any' ? '1 mL' : '6 mL')),
      mild: epinephrine.from === 'cardiac',
    };
  return (
    methemoglobin && {
      ...exposure('dose/methemoglobin', cream('lidocaine-prilocaine cream')),
      infant: methemoglobin.by === 'medicine' || methemoglobin.by === 'everyday',
      mild: methemoglobin.by === 'everyday',
    }
  );
}

const cautionThings = cautions.flatMap((row) => {
  const how = cautionExposure(row);
  // What was treated or taken out may be over: a history of it leaves the question open.
  return how === undefined ? [] : [thing(row.kind, row, how, row.kind === 'medicine' || row.lasts)];
});

/** Every danger of every table that can be told in words and is reported. */
export const things: readonly Thing[] = [
  ...agents.map((row) => thing('anesthetic', row, agentExposure(row))),
  ...allergenThings,
  ...implantThings,
  ...cautionThings,
];
