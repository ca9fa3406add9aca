import type { Note } from '../generated/types.ts';
import type { Source } from '../read.ts';
import type { MapNode, Node, Range } from '../tree/tree.ts';
import { keyOf } from './canonical.ts';
import { olderLater, olderLaterAtTop } from './older-parts.ts';
import { isUnsigned, signaturePart, type Format } from './parts.ts';
import type { Change } from './verify.ts';

const top: Range = { start: 0, end: 0 };

/** Where to look for a part of a signed note that is no longer as it was: the part itself, or else its digest. */
export function placeOfChange({ value: note, root }: Source<Note>, { part, at }: Change): Range {
  if (at !== undefined || note === null) return at ?? top;
  const places: readonly (Range | undefined)[] = [
    procedureOf(note, part),
    note.keys.get(part === signaturePart ? 'signed' : part),
    // A key that occurs twice, or that the format does not have.
    root?.entries.findLast(({ key }) => part === key || part.startsWith(`${key} again`)),
    note.signed?.digests?.find(({ name }) => name === part),
    note.keys.get('signed'),
  ];
  return places.find((place) => place !== undefined) ?? top;
}

function procedureOf({ procedures }: Note, part: string): Range | undefined {
  const number = /^procedure (\d+)$/.exec(part)?.[1];
  return number === undefined ? undefined : procedures?.[Number(number) - 1]?.head;
}

/** The parts of a signed note that may change without changing what is signed: what is written after signing. */
export function laterParts(root: MapNode, format: Format): readonly Range[] {
  const found: Range[] = [];
  const visit = (node: Node, shape: string | undefined, isTop: boolean): void => {
    if (node.kind === 'list') for (const item of node.items) visit(item, shape, false);
    if (node.kind !== 'map') return;
    for (const { key, value } of node.entries)
      if (value !== null) {
        if (comesLater(key, shape, isTop, format)) found.push(value);
        else visit(value, keyOf(key, shape)?.map, false);
      }
  };
  visit(root, 'note', true);
  return found;
}

/** The signature itself is not written later, nor are the findings that had been accepted. */
function comesLater(key: string, shape: string | undefined, isTop: boolean, format: Format): boolean {
  if (key === 'signed' || key === 'accepted') return false;
  if (format !== 1) return isUnsigned(key, shape);
  return isTop ? olderLaterAtTop(key) : olderLater(key);
}
