import { ofProcedure, ofSpecimen } from '../../note/for-all.ts';
import type { Note, Procedure } from '../../note/generated/types.ts';
import { Lines } from '../../note/text/lines.ts';
import type { Part } from '../../note/tree/leaf.ts';
import type { Range } from '../../note/tree/tree.ts';
import type { Analysis } from '../analysis/analysis.ts';
import type { Section } from './section.ts';

/** The procedures that take over a key under `for-all`, with their numbers from 1. */
function takers(note: Note, at: Range): readonly { readonly number: number; readonly one: Procedure }[] {
  const takes = (part: Part): boolean => [...part.keys.values()].includes(at);
  return (note.procedures ?? []).flatMap((one, index) =>
    takes(one) || (one.specimen ?? []).some(takes) ? [{ number: index + 1, one }] : [],
  );
}

/** The range of a key under `for-all`, by its path in the note. */
function keyAt({ forAll }: Note, [first, second, third]: readonly (string | number)[]): Range | undefined {
  if (first !== 'for-all' || forAll === undefined) return undefined;
  return second === 'specimen' ? forAll.specimen?.keys.get(String(third)) : forAll.keys.get(String(second));
}

/** Where the procedures are that take over what a path under `for-all` says: the sites, or else their first keys. */
export function takenOverAt(note: Note, path: readonly (string | number)[]): readonly Range[] {
  const at = keyAt(note, path);
  return at === undefined ? [] : takers(note, at).map(({ one }) => one.site ?? one.head);
}

/** For which procedures a value under `for-all` holds; nothing elsewhere. */
export function forAllSections(note: Note | null, path: readonly (string | number)[]): readonly Section[] {
  const at = note === null ? undefined : keyAt(note, path);
  if (note === null || at === undefined) return [];
  const rows = takers(note, at).map(({ number, one }) => ({ text: `${number}. ${one.site?.text ?? '??'}` }));
  return [{ title: 'Holds for', rows: rows.length === 0 ? [{ text: 'no procedure' }] : rows }];
}

/** What a procedure takes over from `for-all`, with the lines where it is. */
export function takenOver({ note, text }: Analysis, procedure: Procedure | undefined): readonly Section[] {
  const { forAll } = note ?? {};
  if (forAll === undefined || procedure === undefined) return [];
  const lines = new Lines(text);
  const row = (part: Part, all: Part | undefined, key: string): readonly { readonly text: string }[] => {
    const at = all?.keys.get(key);
    return at === undefined || part.keys.get(key) !== at
      ? []
      : [{ text: `${key}: line ${lines.at(at.start).line + 1}` }];
  };
  const rows = [
    ...ofProcedure.flatMap((key) => row(procedure, forAll, key)),
    ...ofSpecimen.flatMap((key) =>
      (procedure.specimen ?? []).flatMap((one) => row(one, forAll.specimen, key)).slice(0, 1),
    ),
  ];
  return rows.length === 0 ? [] : [{ title: 'From for-all', rows }];
}
