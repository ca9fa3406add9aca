import { methods } from '../reference/methods.ts';
import type { ForAll, ForAllSpecimen, Note, Procedure, Specimen } from './generated/types.ts';
import type { Part } from './tree/leaf.ts';
import type { Range } from './tree/tree.ts';
import { rowsIn } from './words/understood.ts';
import { WordTable } from './words/word-table.ts';

const table = new WordTable(methods);

/** Words in the place of a method that say that nothing was done. */
const notDone =
  /^(?:none|not (?:done|performed|attempted)|deferred|declined|refused|postponed|cancell?ed|aborted|abandoned)\b/i;

/** Keys under `for-all` that a procedure takes over as they are, and those that its specimens take over. */
export const ofProcedure = ['preparation', 'instrument', 'dressing'] as const;
export const ofSpecimen = ['medium', 'tests', 'laboratory'] as const;

/**
 * The note with what `for-all` says in each procedure that was done, takes tissue and does not say otherwise. A value that
 * was taken over keeps its place under `for-all`, so that findings point there. No specimen is made: what nobody wrote
 * down stays missing.
 */
export function withForAll(note: Note): Note {
  const { forAll, procedures } = note;
  if (forAll === undefined || procedures === undefined) return note;
  return { ...note, procedures: procedures.map((one) => (isMeant(one) ? completed(one, forAll) : one)) };
}

/** Whether a procedure takes over what holds for all; one whose method nobody knows does, so that no danger is lost. */
export const isMeant = (procedure: Procedure): boolean =>
  isDone(procedure) && rowsIn(table, procedure.method)[0]?.takesTissue !== false;

/** Whether a procedure was done: its method, an anesthetic or a specimen is in the note. */
export const isDone = ({ method, anesthetic = [], specimen = [] }: Procedure): boolean =>
  method?.value === undefined
    ? anesthetic.length > 0 || specimen.some(({ notSent }) => notSent === undefined)
    : !notDone.test(method.value);

function completed(procedure: Procedure, forAll: ForAll): Procedure {
  const own = filled(procedure, forAll, ofProcedure);
  const { specimen } = forAll;
  if (specimen === undefined || own.specimen === undefined) return own;
  return { ...own, specimen: own.specimen.map((one) => sentAs(one, specimen)) };
}

const sentAs = (one: Specimen, all: ForAllSpecimen): Specimen =>
  one.keys.has('not-sent') ? one : filled(one, all, ofSpecimen);

/** A part with the keys of another that it does not have itself. */
function filled<Key extends string, Own extends Part & Readonly<Partial<Record<Key, unknown>>>>(
  own: Own,
  all: Part & Readonly<Partial<Record<Key, unknown>>>,
  wanted: readonly Key[],
): Own {
  const taken = wanted.filter((key) => all.keys.has(key) && !own.keys.has(key));
  if (taken.length === 0) return own;
  const keys = new Map<string, Range>(own.keys);
  const added: Partial<Record<Key, unknown>> = {};
  for (const key of taken) {
    keys.set(key, all.keys.get(key)!);
    if (all[key] !== undefined) added[key] = all[key];
  }
  return { ...own, ...added, keys };
}
