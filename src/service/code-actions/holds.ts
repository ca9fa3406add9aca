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

/**
 * Whether edits of a damaged text add no damage: what could be read can be read, and nothing new is wrong with its YAML.
 * Always true of a text without damage, where each fix is known to hold.
 * @param code of the finding that the edits take away, if it is one of YAML
 */
export function addsNoDamage(analysis: Analysis, edits: readonly TextEdit[], code?: string): boolean {
  if (analysis.damage.length === 0) return true;
  const { kind, text } = analysis;
  let was = before.get(analysis);
  if (was === undefined) before.set(analysis, (was = stateOf(kind, text)));
  const now = stateOf(kind, applyEdits(text, edits));
  if ((was.readable && !now.readable) || now.damage > was.damage) return false;
  for (const [one, count] of now.counts) if (count > (was.counts.get(one) ?? 0)) return false;
  return code === undefined || (now.counts.get(code) ?? 0) < (was.counts.get(code) ?? 0);
}

/** Whether a fix of a damaged text takes its finding of YAML away and adds no damage. */
export const holds = (analysis: Analysis, { does, code, edits }: OfferedFix): boolean =>
  addsNoDamage(analysis, edits, does === 'mend' && code.startsWith('yaml/') ? code : undefined);
