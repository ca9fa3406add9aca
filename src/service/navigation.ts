import { checkOf } from '../checks/index.ts';
import type { Finding } from '../note/finding.ts';
import type { Note, Specimen } from '../note/generated/types.ts';
import type { Leaf } from '../note/leaf.ts';
import type { Range } from '../note/tree.ts';
import { plainWord } from '../note/word-table.ts';
import type { Analysis } from './analysis.ts';
import { locate, type Place } from './locate.ts';
import { entryOf, mapsOf } from './maps.ts';

/** Words of the note that lead to the page of a check. */
export interface Link extends Range {
  /** The check whose page is meant: `dose/near-limit`; its page is `<code>.md` where the pages are. */
  readonly code: string;
}

/** From words of the note to the places that they mean. */
export interface Definition {
  readonly origin: Range;
  readonly targets: readonly Range[];
}

/** The codes of accepted findings, each to its page; in a practice file the codes under `severities`. */
export function linksOf({ root, shapes, kind }: Analysis): readonly Link[] {
  return mapsOf(root, shapes, kind).flatMap((map): readonly Link[] => {
    const value = entryOf(map, 'check')?.value;
    const codes =
      value?.kind === 'text' ? [{ start: value.start, end: value.end, code: value.text.trim() }] : [];
    const severities = entryOf(map, 'severities')?.value;
    const keys = severities?.kind === 'map' ? severities.entries : [];
    return [...codes, ...keys.map(({ start, end, key }) => ({ start, end, code: key }))].filter(
      ({ code }) => checkOf(code) !== undefined,
    );
  });
}

/** From an accepted code to its finding, from `same-as` to the label, from an event's procedure to the procedure. */
export function definitionAt(analysis: Analysis, offset: number): Definition | undefined {
  const { note } = analysis;
  const place = locate(analysis.root, offset, analysis.shapes, analysis.kind);
  if (note === null || place.onKey || place.node?.kind !== 'text') return undefined;
  const targets = byKey.get(place.key?.key ?? '')?.(place.node.text.trim(), { analysis, note, place }) ?? [];
  const { start, end } = place.node;
  return targets.length === 0 ? undefined : { origin: { start, end }, targets };
}

interface Asked {
  readonly analysis: Analysis;
  readonly note: Note;
  readonly place: Place;
}

const byKey: ReadonlyMap<string, (text: string, asked: Asked) => readonly Range[]> = new Map([
  ['check', acceptedFindings],
  ['same-as', (text: string, { note }: Asked) => labels(note, text)],
  ['procedure', (text: string, { note }: Asked) => [...labels(note, text), ...numbered(note, text)]],
]);

/** The findings of a code in the part that accepts it; in the whole note where that part has none. */
function acceptedFindings(text: string, { analysis, place }: Asked): readonly Range[] {
  const found = analysis.judgement.findings.filter(({ code }) => code === text);
  const part = mapsOf(analysis.root, analysis.shapes, analysis.kind).findLast(
    (map) => place.around.includes(map.node) && map.index.byName.has('accepted'),
  );
  const inside = ({ start, end }: Finding): boolean =>
    part !== undefined && start >= Math.min(part.node.start, part.head.start) && end <= part.node.end;
  const near = found.filter(inside);
  return near.length > 0 ? near : found;
}

const specimensOf = (note: Note): readonly Specimen[] =>
  (note.procedures ?? []).flatMap(({ specimen = [] }) => specimen);

const labels = (note: Note, text: string): readonly Leaf<string>[] =>
  specimensOf(note).flatMap(({ label }) =>
    label?.value !== undefined && plainWord(label.value) === plainWord(text) ? [label] : [],
  );

function numbered(note: Note, text: string): readonly Range[] {
  const number = /^(?:no\.? *|number *|procedure *|#)?(\d+)$/i.exec(text)?.[1];
  const procedure = number === undefined ? undefined : note.procedures?.[Number(number) - 1];
  return procedure === undefined ? [] : [procedure.site ?? procedure.head];
}

/** Ranges that a growing selection takes in turn, the innermost first, each inside of the next. */
export function selectionsAt({ root, shapes, kind, text }: Analysis, offset: number): readonly Range[] {
  const { around, entry, onKey } = locate(root, offset, shapes, kind);
  const ranges: Range[] = [];
  for (const { start, end } of [
    ...(onKey && entry !== undefined ? [entry] : []),
    ...around.toReversed(),
    { start: 0, end: text.length },
  ]) {
    const last = ranges.at(-1);
    const grows =
      last === undefined || (start <= last.start && end >= last.end && end - start > last.end - last.start);
    if (grows) ranges.push({ start, end });
  }
  return ranges;
}
