import { readNote, readPractice } from '../../note/read.ts';
import { applyEdits } from '../../note/tree/edit.ts';
import type { TextEdit } from '../../note/tree/finding.ts';
import type { Analysis } from '../analysis/analysis.ts';
import type { OfferedFix } from './offered-fix.ts';

/** What reading finds wrong with how a text is written. */
interface State {
  readonly readable: boolean;
  readonly damage: number;
  /** How many problems of YAML there are of each code. */
  readonly counts: ReadonlyMap<string, number>;
}

const before = new WeakMap<Analysis, State>();

function stateOf(kind: Analysis['kind'], text: string): State {
  const { root, damage, problems } = kind === 'note' ? readNote(text) : readPractice(text);
  const counts = new Map<string, number>();
  for (const { code } of problems)
    if (code.startsWith('yaml/')) counts.set(code, (counts.get(code) ?? 0) + 1);
  return { readable: root !== null, damage: damage.length, counts };
}

const isWorse = (was: State, now: State): boolean =>
  (was.readable && !now.readable) ||
  now.damage > was.damage ||
  [...now.counts].some(([code, count]) => count > (was.counts.get(code) ?? 0));

/**
 * Whether edits of a damaged text add no damage: what could be read can be read, and nothing new is wrong with its YAML.
 * Always true of a text whose YAML is right, where each fix is known to hold.
 * @param code of the finding that the edits take away, if it is one of YAML
 */
export function addsNoDamage(analysis: Analysis, edits: readonly TextEdit[], code?: string): boolean {
  const { kind, text, damage, judgement } = analysis;
  if (damage.length === 0 && !judgement.findings.some((one) => one.code.startsWith('yaml/'))) return true;
  let was = before.get(analysis);
  if (was === undefined) before.set(analysis, (was = stateOf(kind, text)));
  const now = stateOf(kind, applyEdits(text, edits));
  if (isWorse(was, now)) return false;
  return code === undefined || (now.counts.get(code) ?? 0) < (was.counts.get(code) ?? 0);
}

/** Whether a fix of a damaged text takes its finding of YAML away and adds no damage. */
export const holds = (analysis: Analysis, { does, code, edits }: OfferedFix): boolean =>
  addsNoDamage(analysis, edits, does === 'mend' && code.startsWith('yaml/') ? code : undefined);
