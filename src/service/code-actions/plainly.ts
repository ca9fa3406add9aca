import { checkOf, type Unclear } from '../../checks/index.ts';
import type { Finding, Fix, TextEdit } from '../../note/tree/finding.ts';
import { entryOf, mapsOf, type PlacedMap } from '../../note/tree/maps.ts';
import type { Node, Range, TextNode } from '../../note/tree/tree.ts';
import type { Analysis } from '../analysis/analysis.ts';
import { addWord, isRefused } from '../edits/fields.ts';

/**
 * The two ways out of a statement that leaves a danger open: an entry of the patient that says it, and `??`, which leaves
 * it open until somebody has asked. No fix writes that there is no such thing.
 */
export function plainly(analysis: Analysis, finding: Finding): readonly Fix[] {
  const unclear = checkOf(finding.code)?.unclear?.(finding);
  if (unclear === undefined) return [];
  const maps = mapsOf(analysis.root, analysis.shapes, analysis.kind);
  const patient = maps.find(({ index }) => index.shape.title === 'patient');
  if (patient === undefined) return [];
  const { key, name } = unclear;
  return [
    ...fix(`${key}: ${name}`, addWord(analysis.text, patient, key, name)),
    ...fix(`${key} as ??`, leftOpen(analysis.text, patient, unclear, finding)),
  ];
}

function fix(title: string, edits: ReturnType<typeof addWord>): readonly Fix[] {
  if (isRefused(edits)) return [];
  return [{ title: `correct the record: ${title}`, kind: 'record', sure: false, edits }];
}

/** `??` in the place of the entry that is unclear; beside the others where another text is. */
function leftOpen(
  text: string,
  patient: PlacedMap,
  { key }: Unclear,
  finding: Finding,
): ReturnType<typeof addWord> {
  const value = entryOf(patient, key)?.value ?? null;
  const own = value === null ? undefined : textAt(value, [finding, ...finding.related]);
  if (own === undefined) return addWord(text, patient, key, '??');
  const edit: TextEdit = { start: own.start, end: own.end, text: '??' };
  return [edit];
}

/** The text in a value that holds one of some places. */
function textAt(node: Node, places: readonly Range[]): TextNode | undefined {
  if (!places.some(({ start }) => node.start <= start && start < node.end)) return undefined;
  if (node.kind === 'text') return node;
  const parts = node.kind === 'list' ? node.items : node.entries.map(({ value }) => value);
  for (const part of parts) {
    const found = part === null ? undefined : textAt(part, places);
    if (found !== undefined) return found;
  }
  return undefined;
}
