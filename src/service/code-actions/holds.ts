import { readNote, readPractice } from '../../note/read.ts';
import { applyEdits } from '../../note/tree/edit.ts';
import type { TextEdit } from '../../note/tree/finding.ts';
import { isDanger } from '../../checks/danger.ts';
import { analyse, type Analysis } from '../analysis/analysis.ts';
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
  if (isWhole(analysis)) return true;
  const { kind, text } = analysis;
  let was = before.get(analysis);
  if (was === undefined) before.set(analysis, (was = stateOf(kind, text)));
  const now = stateOf(kind, applyEdits(text, edits));
  if (isWorse(was, now)) return false;
  return code === undefined || (now.counts.get(code) ?? 0) < (was.counts.get(code) ?? 0);
}

/** Whether nothing is wrong with the YAML of a text. */
const isWhole = ({ damage, judgement }: Analysis): boolean =>
  damage.length === 0 && !judgement.findings.some(({ code }) => code.startsWith('yaml/'));

/** Errors that only say that a word or a part can't be read: they go when it is put right. */
const unread = /^dose\/(?:cannot-judge|unknown-|concentration-missing)/;

const dangersIn = ({ judgement }: Analysis): readonly string[] =>
  judgement.findings.filter((one) => isDanger(one) && !unread.test(one.code)).map(({ code }) => code);

/** The mg of each injection of the visit and of later days; undefined where the dose is not judged. */
function dosesIn({ judgement: { dose } }: Analysis): string | undefined {
  if (dose?.judged !== true) return undefined;
  return JSON.stringify([dose, ...dose.later].map(({ given }) => given.map(({ mg }) => mg)));
}

/**
 * Whether edits of a damaged text leave every error of dose, allergy, device and medium that there is, and every dose that
 * is judged: what a fix of the YAML takes for text may have been a key. Always true of a text whose YAML is right.
 */
export function keepsDangers(analysis: Analysis, edits: readonly TextEdit[]): boolean {
  if (isWhole(analysis)) return true;
  const after = analyse(applyEdits(analysis.text, edits), analysis.context);
  const left = dangersIn(after);
  if (!dangersIn(analysis).every((code) => left.includes(code))) return false;
  const doses = dosesIn(analysis);
  return doses === undefined || doses === dosesIn(after);
}

/** Whether a fix of a damaged text takes its finding of YAML away and adds no damage. */
export const holds = (analysis: Analysis, { does, code, edits }: OfferedFix): boolean =>
  addsNoDamage(analysis, edits, does === 'mend' && code.startsWith('yaml/') ? code : undefined);
