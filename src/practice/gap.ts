import type { Practice } from '../note/generated/types.ts';
import type { Source } from '../note/read.ts';
import type { Problem } from '../note/tree/finding.ts';
import type { Entry, Node } from '../note/tree/tree.ts';
import { practiceShapeProblems } from '../schema/validate.ts';
import { isUnread } from './leaves.ts';

/** What of a practice's file is not in force though it is there, so that published values may hold in its place. */
export interface Gap {
  /** The whole file, or rows of it that could have held a limit of dose. */
  readonly form: 'file' | 'rows';
  /** Why a dose is not judged, as a clause. */
  readonly why: string;
}

/** The gap of a file of which nothing can be read. */
export const wholeGap: Gap = {
  form: 'file',
  why: 'the practice file can’t be read, and it may hold a limit',
};

const rowsGap: Gap = {
  form: 'rows',
  why: 'a row of the practice file that may hold a limit can’t be read',
};

/** Problems after which nobody knows all that was written, wherever they are. */
const anywhere: ReadonlySet<string> = new Set([
  'yaml/duplicate-key',
  'yaml/merge-key',
  'yaml/several-documents',
]);

/** Problems through which a row under one of these keys is lost. */
const inRows: ReadonlySet<string> = new Set([
  'practice/limit-without-number',
  'practice/unknown-agent',
  'practice/unknown-authority',
  'quantity/not-positive',
  'quantity/not-understood',
  'quantity/unreadable',
  'shape/wrong-kind',
]);

/** The keys under which a limit of dose may be written. */
const rowKeys: ReadonlySet<string> = new Set(['authority', 'limits']);

/** Words by which an unknown key, or what is under it, may be a limit. */
const speaksOfLimits = /max|\bm?c?g\b|limit|ceiling|authorit|dose/i;

/** More of an unknown key is taken for what may be a limit. */
const longest = 2000;

/**
 * What of a practice's file is missing from its tables where a limit could have been; undefined where nothing is.
 * @param faults what was noticed where the file was laid over the tables
 */
export function gapOf(source: Source<Practice>, faults: readonly Problem[]): Gap | undefined {
  const { value, root, damage, problems, unread } = source;
  if (value === null || root === null) return isEmpty(source) ? undefined : wholeGap;
  const rows = root.entries.filter((entry) => rowKeys.has(source.respelled.get(entry)?.key ?? entry.key));
  const lost = [...problems, ...practiceShapeProblems(source), ...faults].some(
    ({ code, at }) => anywhere.has(code) || (inRows.has(code) && rows.some((row) => holds(row, at.start))),
  );
  const waits =
    isUnread(value.authority) ||
    (value.limits ?? []).some(({ agent, maxMg, maxMgPerKg }) => [agent, maxMg, maxMgPerKg].some(isUnread));
  const hidden = unread.some((entry) => rows.some((row) => holds(row, entry.start)) || mayLimit(entry));
  return damage.length > 0 || lost || waits || hidden ? rowsGap : undefined;
}

/** A file in which nothing is written holds no limit. */
const isEmpty = ({ text }: Source<Practice>): boolean =>
  text.split('\n').every((line) => /^(?:#|-{3}$|$)/.test(line.trim()));

const holds = ({ start, end, value }: Entry, at: number): boolean => at >= start && at <= (value?.end ?? end);

const mayLimit = ({ key, value }: Entry): boolean => {
  const text = `${key.slice(0, longest)} ${textOf(value)}`;
  return text.length > longest || speaksOfLimits.test(text);
};

function textOf(node: Node | null): string {
  if (node === null) return '';
  if (node.kind === 'text') return node.text;
  if (node.kind === 'list') return node.items.map(textOf).join(' ');
  return node.entries.map(({ key, value }) => `${key} ${textOf(value)}`).join(' ');
}
