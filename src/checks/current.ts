import type { Event, Note, Procedure } from '../note/generated/types.ts';
import type { Leaf } from '../note/tree/leaf.ts';
import { plainWord } from '../note/words/word-table.ts';
import type { Tables } from '../practice/tables.ts';
import type { HemostasisRow, Stops } from '../reference/hemostasis.ts';
import { usedIn } from './patient-texts.ts';
import { shared } from './shared.ts';
import { rowsIn } from './words.ts';

/** A word of a procedure that says that current, heat or one of both was used. */
export interface Energy {
  readonly leaf: Leaf<string>;
  readonly stops: Extract<Stops, 'current' | 'either' | 'heat' | 'bipolar'>;
  /** Whether it is under hemostasis, where it can be written more exactly. */
  readonly hemostasis: boolean;
}

const energies: ReadonlySet<Stops | undefined> = new Set(['current', 'either', 'heat', 'bipolar']);
const isEnergy = (row: HemostasisRow): row is HemostasisRow & { readonly stops: Energy['stops'] } =>
  energies.has(row.stops);

/** What says of a procedure that tissue was heated or current was used, in the order of the note's keys. */
export function energiesOf(procedure: Procedure, tables: Tables): readonly Energy[] {
  const stopped = (procedure.hemostasis ?? []).flatMap((leaf) => energyIn(leaf, tables, true));
  const { method, instrument } = procedure;
  const row =
    tables.methods.find(method?.value ?? '') ??
    rowsIn(tables.methods, method).find(({ current }) => current !== undefined);
  // Hemostasis may say which it was.
  if (method !== undefined && row?.current !== undefined && (row.current === 'yes' || stopped.length === 0))
    return [
      { leaf: method, stops: row.current === 'yes' ? 'current' : 'either', hemostasis: false },
      ...stopped,
    ];
  const others = [row === undefined ? method : undefined, instrument];
  return [...others.flatMap((leaf) => (leaf === undefined ? [] : energyIn(leaf, tables, false))), ...stopped];
}

function energyIn(leaf: Leaf<string>, tables: Tables, hemostasis: boolean): Energy[] {
  const row = rowsIn(tables.hemostasis, leaf).find(isEnergy);
  return row === undefined ? [] : [{ leaf, stops: row.stops, hemostasis }];
}

/** Whether current may have passed through the patient: a word that says heat or current counts until it is specified. */
export const isCurrent = ({ stops }: Energy): boolean => stops === 'current' || stops === 'either';

/** A word that says that current may have passed through the patient, with the procedure that it belongs to. */
export interface Current {
  /** Undefined for what happened later and names no procedure. */
  readonly procedure: Procedure | undefined;
  readonly energy: Energy;
}

/** Every word of a note that says that current may have passed through the patient, at the visit or later. */
export const currentsOf = shared(({ note, tables }): readonly Current[] => {
  const found: Current[] = [];
  for (const procedure of note.procedures ?? []) {
    const before = found.length;
    for (const energy of energiesOf(procedure, tables))
      if (isCurrent(energy)) found.push({ procedure, energy });
    if (found.length > before) continue;
    const energy = toldIn([procedure.complications, ...(procedure.remarks ?? [])], tables);
    if (energy !== undefined) found.push({ procedure, energy });
  }
  for (const event of note.events ?? []) {
    const energy = toldIn([event.action, event.outcome], tables);
    if (energy !== undefined) found.push({ procedure: concernedBy(event, note), energy });
  }
  return found;
});

/** The first word of free texts that mentions current that was used. */
function toldIn(leaves: readonly (Leaf<string> | undefined)[], { hemostasis }: Tables): Energy | undefined {
  for (const leaf of leaves)
    for (const { row, leaf: word } of leaf === undefined ? [] : usedIn(leaf, hemostasis)) {
      if (!isEnergy(row)) continue;
      const energy = { leaf: word, stops: row.stops, hemostasis: false };
      if (isCurrent(energy)) return energy;
    }
  return undefined;
}

/** The procedure that an event names by its number or by the label of a specimen; the only one where it names none. */
function concernedBy({ procedure }: Event, { procedures = [] }: Note): Procedure | undefined {
  if (procedures.length <= 1) return procedures[0];
  const named = plainWord(procedure?.value ?? '');
  if (named === '') return undefined;
  return procedures.find(
    ({ specimen = [] }, index) =>
      named === String(index + 1) || specimen.some(({ label }) => plainWord(label?.value ?? '') === named),
  );
}
