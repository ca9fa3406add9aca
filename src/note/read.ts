import { Binder } from './bind.ts';
import type { Problem } from './finding.ts';
import { noteShapes, practiceShapes } from './generated/shapes.ts';
import type { Note, Practice } from './generated/types.ts';
import { indexShapes } from './shape.ts';
import type { Node } from './tree.ts';
import { parseYaml } from './yaml.ts';

/** A text that was read: `value` is null where it holds no map to begin with. */
export interface Source<T> {
  readonly text: string;
  readonly root: Node | null;
  readonly value: T | null;
  readonly problems: readonly Problem[];
}

export const noteIndex = indexShapes(noteShapes);
export const practiceIndex = indexShapes(practiceShapes);

/** Reads a note. Any text is answered: what is wrong with it stands in `problems`. */
export function readNote(text: string): Source<Note> {
  return read<Note>(text, 'note', noteIndex);
}

/** Reads a practice file, in the same way. */
export function readPractice(text: string): Source<Practice> {
  return read<Practice>(text, 'practice', practiceIndex);
}

function read<T>(text: string, name: string, index: typeof noteIndex): Source<T> {
  const { root, problems } = parseYaml(text);
  if (root?.kind !== 'map') return { text, root, value: null, problems };
  const binder = new Binder(index);
  // The binder follows the shapes that the types were generated from.
  const value = binder.map(root, name, { start: root.start, end: root.start }, []) as unknown as T;
  return { text, root, value, problems: [...problems, ...binder.problems] };
}
