import type { Note, Procedure } from '../note/generated/types.ts';
import type { Leaf } from '../note/leaf.ts';
import type { Tables } from '../practice/tables.ts';
import type { HemostasisRow, Stops } from '../reference/hemostasis.ts';
import { rowsIn } from './words.ts';

/** A word of a procedure that says that current, heat or one of both was used. */
export interface Energy {
  readonly leaf: Leaf<string>;
  readonly stops: Extract<Stops, 'current' | 'either' | 'heat' | 'bipolar'>;
  /** Whether it stands under hemostasis, where it can be written more exactly. */
  readonly hemostasis: boolean;
}

const energies: ReadonlySet<Stops | undefined> = new Set(['current', 'either', 'heat', 'bipolar']);
const isEnergy = (row: HemostasisRow): row is HemostasisRow & { readonly stops: Energy['stops'] } =>
  energies.has(row.stops);

/** What says of a procedure that tissue was heated or current was used, in the order of the note's keys. */
export function energiesOf(procedure: Procedure, tables: Tables): readonly Energy[] {
  const stopped = (procedure.hemostasis ?? []).flatMap((leaf) => energyIn(leaf, tables, true));
  const { method, instrument } = procedure;
  const row = method?.value === undefined ? undefined : tables.methods.find(method.value);
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

/** Every word of a note that says that current may have passed through the patient. */
export function currentsOf(note: Note, tables: Tables): readonly { procedure: Procedure; energy: Energy }[] {
  const found: { procedure: Procedure; energy: Energy }[] = [];
  for (const procedure of note.procedures ?? [])
    for (const energy of energiesOf(procedure, tables))
      if (isCurrent(energy)) found.push({ procedure, energy });
  return found;
}
