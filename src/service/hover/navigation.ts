import { checkOf } from '../../checks/index.ts';
import type { Finding } from '../../note/tree/finding.ts';
import type { Note, Specimen } from '../../note/generated/types.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import type { MapNode, Range } from '../../note/tree/tree.ts';
import { plainWord } from '../../note/words/word-table.ts';
import type { Analysis } from '../analysis/analysis.ts';
import { locate, type Place } from '../analysis/locate.ts';
import { takenOverAt } from './for-all.ts';
import { entryOf, mapsOf } from '../../note/tree/maps.ts';

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

/** From what is accepted to its finding, from what holds for all to the procedures, from `same-as` to the label, from an event's procedure to the procedure. */
export function definitionAt(analysis: Analysis, offset: number): Definition | undefined {
  const { note } = analysis;
  const place = locate(analysis.root, offset, analysis.shapes, analysis.kind);
  const { node, entry } = place;
  if (note === null || entry === undefined) return undefined;
  const accepted = acceptedAt(place);
  if (accepted !== undefined) return definition(entry, acceptedFindings(accepted, analysis));
  const origin = place.onKey ? entry : (node ?? entry);
  const taken = definition(origin, takenOverAt(note, place.path));
  return taken ?? (place.onKey ? undefined : meantBy(place, note));
}

/** The places that a word of the note means. */
const meantBy = ({ node, key }: Place, note: Note): Definition | undefined =>
  node?.kind === 'text'
    ? definition(node, byKey.get(key?.key ?? '')?.(node.text.trim(), note) ?? [])
    : undefined;

const definition = ({ start, end }: Range, targets: readonly Range[]): Definition | undefined =>
  targets.length === 0 ? undefined : { origin: { start, end }, targets };

type Ways = (text: string, note: Note) => readonly Range[];

const byKey: ReadonlyMap<string, Ways> = new Map<string, Ways>([
  ['same-as', (text, note) => labels(note, text)],
  ['procedure', (text, note) => [...labels(note, text), ...numbered(note, text)]],
]);

/** The acceptance around a place: any of its keys and values. */
export function acceptedAt({ path, around }: Place): MapNode | undefined {
  if (!path.includes('accepted')) return undefined;
  return around.findLast((one): one is MapNode => 'kind' in one && one.kind === 'map');
}

/** The findings that an acceptance is about: those of its code in its part; in the whole note where that part has none. */
export function acceptedFindings(accepted: MapNode, analysis: Analysis): readonly Finding[] {
  const check = accepted.entries.find(({ key }) => key === 'check')?.value;
  if (check?.kind !== 'text') return [];
  const found = analysis.judgement.findings.filter(({ code }) => code === check.text.trim());
  const part = mapsOf(analysis.root, analysis.shapes, analysis.kind).findLast(
    ({ node, index }) => index.byName.has('accepted') && isInside(accepted, node),
  );
  const near = found.filter(
    ({ start, end }) =>
      part !== undefined && start >= Math.min(part.node.start, part.head.start) && end <= part.node.end,
  );
  return near.length > 0 ? near : found;
}

const isInside = (inner: Range, outer: Range): boolean =>
  inner.start >= outer.start && inner.end <= outer.end;

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
