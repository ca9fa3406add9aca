import { Binder, type WordLeaf } from './bind.ts';
import type { Problem } from './tree/finding.ts';
import { withForAll } from './for-all.ts';
import { noteShapes, practiceShapes } from './generated/shapes.ts';
import type { Note, Practice } from './generated/types.ts';
import { withPlannedDays } from './planned-days.ts';
import { KeyNames } from './tree/key-names.ts';
import { parseThrough, type ReadThrough } from './yaml/characters.ts';
import { indexShapes, type KeyIndex, type KeyShape } from './tree/shape.ts';
import type { Entry, MapNode } from './tree/tree.ts';

/** A text that was read: `value` is null where it can't be taken for what it should be; then one problem says why. */
export interface Source<T> {
  readonly text: string;
  readonly root: MapNode | null;
  /** The root with every character as it was typed; the same one in most notes. */
  readonly asTyped: MapNode | null;
  readonly value: T | null;
  readonly problems: readonly Problem[];
  /** The texts whose words come from tables. */
  readonly words: readonly WordLeaf[];
  /** Misspelt keys, with the keys as which they were read. */
  readonly respelled: ReadonlyMap<Entry, KeyShape>;
  /** Unknown keys, whose values nobody reads. */
  readonly unread: readonly Entry[];
  /** The keys under which something else than `none` is written, wherever they are. */
  readonly said: ReadonlySet<string>;
  /** Whether nothing at all is wrong with its YAML. */
  readonly sound: boolean;
  /** Whether its form is surely as the schema wants it, and nothing in it waits. */
  readonly fits: boolean;
  /** Where the parser stumbled, so that keys after it may only seem to be missing. */
  readonly damage: readonly number[];
}

interface Kind {
  readonly name: string;
  readonly index: ReadonlyMap<string, KeyIndex>;
  readonly names: KeyNames;
  /** Whether an empty list says something: no day on which a practice is closed, but not no dressing of a wound. */
  readonly hollow: boolean;
}

export const noteIndex = indexShapes(noteShapes);
export const practiceIndex = indexShapes(practiceShapes);

const noteKind: Kind = { name: 'note', index: noteIndex, names: new KeyNames(noteIndex), hollow: false };
const practiceKind: Kind = {
  name: 'practice',
  index: practiceIndex,
  names: new KeyNames(practiceIndex),
  hollow: true,
};

/** The version of both formats that is read here. */
const ownVersion = 1;

/** What a value of the note says only together with others of it. */
const completed = (note: Note): Note => withForAll(withPlannedDays(note));

/** Reads a note. Any text is answered: what is wrong with it is in `problems`. */
export function readNote(text: string): Source<Note> {
  return bound(text, parseThrough(text, noteKind.names), noteKind, completed);
}

/** Reads a practice file, in the same way. */
export function readPractice(text: string): Source<Practice> {
  return bound<Practice>(text, parseThrough(text, practiceKind.names), practiceKind, (value) => value);
}

/** Reads a note of whose YAML the tree is known, and nothing is wrong with it. */
export function readTree(text: string, root: MapNode): Source<Note> {
  return bound(text, { root, asTyped: root, problems: [], damage: [] }, noteKind, completed);
}

function bound<T>(
  text: string,
  { root, problems, damage, asTyped }: ReadThrough,
  { name, index, hollow }: Kind,
  complete: (value: T) => T,
): Source<T> {
  const binder = new Binder(index, hollow);
  const { respelled, said, unread } = binder;
  const sound = problems.length === 0 && damage.length === 0;
  const tree = { text, root, asTyped, damage, sound };
  const nothing = { ...tree, value: null, words: [], respelled, unread, said, fits: false };
  if (root === null) return { ...nothing, problems };
  const newer = newerFormat(root);
  if (newer !== undefined) return { ...nothing, problems: [newer] };
  // The binder follows the shapes that the types were generated from.
  const bare = binder.map(root, name, { start: root.start, end: root.start }) as unknown as T;
  const value = complete(bare);
  const { words, fits } = binder;
  return { ...nothing, value, problems: problems.concat(binder.problems), words, fits };
}

/** Nothing may be said about a note in a format that was made after this version. */
function newerFormat(root: MapNode): Problem | undefined {
  const version = root.entries.find(({ key }) => key === 'wheal')?.value;
  if (version?.kind !== 'text' || !/^\d+(\.\d+)?$/.test(version.text)) return undefined;
  if (Number(version.text) <= ownVersion) return undefined;
  const { start, end, text } = version;
  return { code: 'shape/newer-format', at: { start, end }, args: { version: text, own: ownVersion } };
}
