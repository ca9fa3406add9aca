import { composed as composedOf, lexed, type Composed, type Fault } from './compose.ts';
import type { Problem, TextEdit } from '../tree/finding.ts';
import { refusalOf } from './limits.ts';
import type { KeyNames } from '../tree/key-names.ts';
import { ordinaryTree } from './fast-path.ts';
import { rowAt } from './line.ts';
import { problemOf } from './syntax-problems.ts';
import { repairOf, type Repair } from './repairs.ts';
import type { MapNode, Node, Range } from '../tree/tree.ts';
import { treeOf, type Tree } from './build-tree.ts';

/** The tree of a text, with what was wrong with its YAML. */
export interface Parsed {
  /** Null where the text can't be taken for a note at all; then there is exactly one problem. */
  readonly root: MapNode | null;
  readonly problems: readonly Problem[];
  /** Where the tree may be damaged, since the parser could not go on as it should. */
  readonly damage: readonly number[];
}

/** Above this length a text with faults is parsed twice, not up to four times. */
const longText = 32 * 1024;
const mostRepairs = 200;

/** Parses YAML 1.2 into our own tree. Never throws, and never follows an alias. */
export function parseYaml(text: string, keys: KeyNames): Parsed {
  const refusal = refusalOf(text);
  if (refusal !== undefined) return alone(refusal);
  const tokens = lexed(text);
  const root = ordinaryTree(tokens);
  if (root !== undefined) return { root, problems: [], damage: [] };
  const composed = composedOf(tokens, text.length);
  const [first] = composed.faults;
  if (first?.code === 'RESOURCE_EXHAUSTION') return alone(problemOf(first, text));
  if (first !== undefined && composed.hopeless) return alone(problemOf({ ...first, code: 'hopeless' }, text));
  const tree = treeOf(composed, text, new Map(), keys);
  if (tree.anchored !== undefined) return alone({ code: 'yaml/anchor-or-alias', at: tree.anchored });
  const clean = composed.faults.length === 0 && tree.odd.length === 0;
  return judged(
    text,
    composed,
    clean ? { tree, problems: [], damage: [] } : mend(text, keys, composed, tree),
  );
}

interface Mended {
  readonly tree: Tree;
  readonly problems: readonly Problem[];
  readonly damage: readonly number[];
}

function judged(text: string, composed: Composed, { tree, problems, damage }: Mended): Parsed {
  // In a damaged part a line may only seem to run on.
  const seen =
    damage.length === 0 ? tree.problems : tree.problems.filter(({ code }) => code !== 'yaml/runs-on');
  const all = [...problems, ...seen];
  for (const at of composed.directives) all.push({ code: 'yaml/directive', at });
  if (composed.second !== undefined) {
    const end = Math.min(composed.second + 3, text.length);
    all.push({ code: 'yaml/several-documents', at: { start: composed.second, end } });
  }
  if (tree.root?.kind === 'map') return { root: tree.root, problems: all, damage };
  const [first] = problems;
  return alone(first === undefined || tree.root?.kind === 'list' ? notANote(tree.root, text) : first);
}

function notANote(root: Node | null, text: string): Problem {
  if (root === null) return { code: 'yaml/empty', at: { start: 0, end: 0 } };
  const row = rowAt(text, root.start);
  return {
    code: 'shape/not-a-note',
    form: root.kind,
    at: { start: row.first, end: Math.max(row.first, row.end) },
  };
}

const alone = (problem: Problem): Parsed => ({ root: null, problems: [problem], damage: [] });

const inOrder = (faults: readonly Fault[]): Fault[] => [...faults].sort((a, b) => a.start - b.start);

/** Repairs the lines that the parser stumbled over, each with one problem, and parses again. */
function mend(text: string, keys: KeyNames, composed: Composed, tree: Tree): Mended {
  const repairs = new Map<number, Repair>();
  let current: { readonly composed: Composed; readonly tree: Tree } = { composed, tree };
  for (let round = text.length > longText ? 1 : 3; round > 0; round--) {
    const faults = inOrder([...current.composed.faults, ...current.tree.odd]).slice(0, mostRepairs);
    const fresh = faults
      .map((fault) => repairOf(text, fault, keys))
      .filter((repair) => repair !== undefined)
      .filter((repair) => !repairs.has(repair.row) && repairs.set(repair.row, repair));
    if (fresh.length === 0) break;
    current = again(text, keys, [...repairs.values()]);
    if (current.composed.faults.length === 0 && current.tree.odd.length === 0) break;
  }
  return mended(text, current, [...repairs.values()]);
}

function again(text: string, keys: KeyNames, repairs: readonly Repair[]): { composed: Composed; tree: Tree } {
  const marks = new Map<number, Range>();
  for (const { mark } of repairs) if (mark !== undefined) marks.set(mark.at, mark.meant);
  const covered = withCovers(text, repairs);
  const composed = composedOf(lexed(covered), covered.length);
  return { composed, tree: treeOf(composed, text, marks, keys) };
}

function withCovers(text: string, repairs: readonly Repair[]): string {
  const covers = repairs.map(({ cover }) => cover).filter((cover): cover is TextEdit => cover !== undefined);
  covers.sort((a, b) => a.start - b.start);
  let result = '';
  for (const cover of covers) {
    if (cover.start < result.length) continue;
    result += text.slice(result.length, cover.start) + cover.text;
  }
  return result + text.slice(result.length);
}

/** One line that is too far in or out shifts all that follow; only the first is blamed. */
function firstShift(): (problem: Problem) => boolean {
  let shifted = false;
  return ({ code }) => {
    if (code !== 'yaml/indentation' && code !== 'yaml/tab') return true;
    const first = !shifted;
    shifted = true;
    return first;
  };
}

function mended(
  text: string,
  { composed, tree }: { composed: Composed; tree: Tree },
  repairs: readonly Repair[],
): Mended {
  const blamed = new Set(repairs.map(({ row }) => row));
  const explained = new Set(repairs.map(({ explains }) => explains));
  const left = inOrder([...composed.faults, ...tree.odd]).filter(({ start }) => {
    const row = rowAt(text, start).start;
    return !explained.has(start) && !blamed.has(row) && blamed.add(row);
  });
  const problems = [...repairs.map(({ problem }) => problem), ...left.map((fault) => problemOf(fault, text))];
  problems.sort((a, b) => a.at.start - b.at.start);
  const unfinished = repairs.filter((repair) => repair.unfinished === true || repair.cover === undefined);
  const damage = [
    ...unfinished.map(({ row }) => row),
    ...composed.faults.map(({ start }) => rowAt(text, start).start),
  ];
  return { tree, problems: problems.filter(firstShift()), damage };
}
