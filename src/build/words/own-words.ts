/** The words of our own tables, with the rows that each is a word of. */
import { agents } from '../../reference/agents.ts';
import { allergens, reactions } from '../../reference/allergens.ts';
import { authorities } from '../../reference/authorities.ts';
import { bloodThinners } from '../../reference/blood-thinners.ts';
import { cautions } from '../../reference/cautions.ts';
import { closures } from '../../reference/closures.ts';
import { otherConditions } from '../../reference/conditions.ts';
import { consents } from '../../reference/consents.ts';
import { depths } from '../../reference/depths.ts';
import { diagnoses } from '../../reference/diagnoses.ts';
import { dressings } from '../../reference/dressings.ts';
import { cardiacConditions } from '../../reference/epinephrine.ts';
import { events } from '../../reference/events.ts';
import { contacts, otherPersons, patientWords } from '../../reference/contact-ways.ts';
import { findingsToAct, recalls, scarRisks } from '../../reference/follow-up.ts';
import { helpers } from '../../reference/helpers.ts';
import { hemostasis } from '../../reference/hemostasis.ts';
import { implants } from '../../reference/implants.ts';
import { injectedDrugs } from '../../reference/injected-drugs.ts';
import { instruments } from '../../reference/instruments.ts';
import { laboratoryTests } from '../../reference/laboratory-tests.ts';
import { layers } from '../../reference/layers.ts';
import { lesions } from '../../reference/lesions.ts';
import { materials } from '../../reference/materials.ts';
import { media } from '../../reference/media.ts';
import { otherMedicines } from '../../reference/medicines.ts';
import { methods } from '../../reference/methods.ts';
import { preparations } from '../../reference/preparations.ts';
import { qualifiers } from '../../reference/qualifiers.ts';
import { relations } from '../../reference/relations.ts';
import { sites } from '../../reference/sites.ts';
import { lengthening } from '../../reference/suture-windows.ts';
import { techniques } from '../../reference/techniques.ts';
import { withTradeNames } from '../../reference/trade-names.ts';
import type { WordRow } from '../../reference/types.ts';
import { unitRows } from '../../note/values/units.ts';
import { wordsRead } from '../../note/words/word-table.ts';
import { fillers, landmarkWords, sideWords, surfaceWords } from '../../note/words/site-words.ts';

const tables: readonly (readonly WordRow[])[] = [
  agents,
  allergens,
  authorities,
  bloodThinners,
  cardiacConditions,
  cautions,
  closures,
  consents,
  contacts,
  otherPersons,
  patientWords,
  depths,
  diagnoses,
  dressings,
  events,
  findingsToAct,
  helpers,
  hemostasis,
  implants,
  injectedDrugs,
  instruments,
  laboratoryTests,
  layers,
  lengthening,
  lesions,
  materials,
  media,
  methods,
  otherConditions,
  otherMedicines,
  preparations,
  reactions,
  recalls,
  relations,
  scarRisks,
  sites,
  techniques,
];

/** Shorter words are never taken for misspelled ones. */
const shortest = 3;

/** Each word of a key, of a table, of a unit or of a place by itself, with what it is a word of. */
export function ownWords(keys: Iterable<string>): ReadonlyMap<string, ReadonlySet<object>> {
  const words = new Map<string, Set<object>>();
  const add = (text: string, row: object): void => {
    for (const word of text.toLowerCase().split(/[^a-z]+/)) {
      if (word.length < shortest) continue;
      const rows = words.get(word);
      if (rows === undefined) words.set(word, new Set([row]));
      else rows.add(row);
    }
  };
  for (const rows of tables)
    for (const row of withTradeNames(rows)) for (const text of wordsRead(row)) add(text, row);
  for (const key of keys) add(key, { key });
  for (const row of qualifiers) for (const text of row.words) add(text, row);
  for (const row of unitRows) for (const text of row.words) add(text, row);
  for (const text of [...sideWords.keys(), ...fillers, ...landmarkWords, ...surfaceWords])
    add(text, { text });
  return words;
}
