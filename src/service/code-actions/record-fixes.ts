import type { Finding, Fix, TextEdit } from '../../note/tree/finding.ts';
import { reread } from '../../note/reread.ts';
import type { KeyShape } from '../../note/tree/shape.ts';
import type { Range, TextNode } from '../../note/tree/tree.ts';
import type { AlternativeName } from '../../checks/check.ts';
import { catalogue, checkBy, checkOf, type Check } from '../../checks/index.ts';
import type { Analysis } from '../analysis/analysis.ts';
import { locate, type Place } from '../analysis/locate.ts';
import { alternativesOf, type Alternative } from './alternatives.ts';
import { rowsOfTable } from '../analysis/words.ts';

/** The value that a finding is about, or that it is in. */
interface Doubted {
  readonly analysis: Analysis;
  readonly finding: Finding;
  readonly node: TextNode;
  readonly place: Place;
}

/**
 * Fixes that change what is said to have been done. A ready value is offered only where it is another reading of what
 * was typed (a decimal point, a unit, a year, day and month swapped) or a plan; otherwise `??` takes the place of the value, and
 * somebody has to write what was so. A value that only fits, as the largest volume that is allowed, is never offered.
 * `??` comes first, since the first of several is one key away. Each leaves the note without the finding and with no
 * other in its place, but for what it hid.
 */
export function recordFixesOf(analysis: Analysis, finding: Finding): readonly Fix[] {
  const alternatives = checkOf(finding.code)?.alternatives;
  if (alternatives === undefined || alternatives.forms?.includes(finding.form) === false) return [];
  const value = valueAt(analysis, finding);
  if (value === undefined) return [];
  const others = alternatives.readAs.flatMap((name) => readAs(value, name));
  const settled = others.filter((fix) => settles(value, fix));
  const open = unknown(value).filter((fix) => alternatives.mayLeaveMilder === true || settles(value, fix));
  return [...open, ...settled];
}

function valueAt(analysis: Analysis, finding: Finding): Doubted | undefined {
  const place = locate(analysis.root, finding.start, analysis.shapes, analysis.kind);
  const { node } = place;
  if (place.onKey || node?.kind !== 'text' || finding.end > node.end) return undefined;
  return node.text.trim() === '??' ? undefined : { analysis, finding, node, place };
}

const record = (title: string, { start, end }: Range, text: string): Fix => ({
  title: `correct the record: ${title}`,
  kind: 'record',
  sure: false,
  edits: [{ start, end, text }],
});

/** The value as not yet known, where nothing else that was written is lost with it. */
function unknown({ node, place, ...said }: Doubted): readonly Fix[] {
  const key = valueKey(place, said.analysis);
  return single.has(key?.reads) || isOneWord({ node, place, ...said }, key)
    ? [record(`${place.key?.key ?? 'this'} as ??`, node, '??')]
    : [];
}

/** The key that a bare text is for, where it takes the place of a map with one key. */
function valueKey({ key }: Place, { shapes }: Analysis): KeyShape | undefined {
  if (key?.map === undefined || key.text === undefined) return key;
  return shapes.get(key.map)?.byName.get(key.text) ?? key;
}

/** Readers that take a text as one value; another text may say more than what is in doubt. */
const single: ReadonlySet<string | undefined> = new Set([
  ...[
    'date',
    'plannedDay',
    'moment',
    'occasion',
    'volume',
    'mass',
    'length',
    'area',
    'concentration',
    'dilution',
  ],
  ...['mixture', 'dimensions', 'sutureSize', 'count'],
]);

/** Whether a text is the finding's word and no more; where the key has a table of words, one of these. */
function isOneWord({ analysis, finding, node }: Doubted, key: KeyShape | undefined): boolean {
  if (finding.start !== node.start || finding.end !== node.end) return false;
  const rows = rowsOfTable(analysis.context.tables, key?.words);
  const typed = node.text.trim().toLowerCase();
  const words = rows.flatMap(({ name, synonyms }) => [name, ...synonyms]);
  return words.length === 0 || words.some((word) => word.toLowerCase() === typed);
}

/** The fixes by one alternative of the characters that a finding marks. */
function readAs({ analysis, finding, node, place }: Doubted, name: AlternativeName): readonly Fix[] {
  const quote = /^["']/.exec(analysis.text.slice(finding.start, finding.end))?.[0] ?? '';
  const at = { start: finding.start + quote.length, end: finding.end - quote.length };
  const typed = analysis.text.slice(at.start, at.end);
  return alternativesOf(name, { analysis, at: finding, typed, whole: node.text }).map((other) =>
    record(other.shown ?? other.text, at, written(other, quote, place)),
  );
}

/** Between brackets a comma would end a plain value. */
const written = ({ text }: Alternative, quote: string, { around }: Place): string =>
  quote === '' && text.includes(',') && around.some((one) => 'flow' in one && one.flow === true)
    ? `"${text}"`
    : text;

/**
 * What a note may have more of once a value is another: `??` itself, and what is due on days that are only now known, or
 * known no more.
 */
const mayFollow = /^(?:shape\/pending|follow-up\/.*)$/;

/** What came of each edit that was tried: an editor asks again for the same text whenever the caret moves. */
const tried = new WeakMap<Analysis, Map<string, boolean>>();

/** Whether the note reads without the finding after a fix, and with no error or warning in its place. */
function settles({ analysis, finding: { code } }: Doubted, { edits }: Fix): boolean {
  const known = tried.get(analysis) ?? new Map<string, boolean>();
  tried.set(analysis, known);
  const key = JSON.stringify([code, edits]);
  const answer = known.get(key) ?? edits.every((edit) => isBetter(analysis, code, edit));
  known.set(key, answer);
  return answer;
}

/** The checks by which an edit is judged. */
const counting = catalogue.filter(({ code }) => !mayFollow.test(code));

/** Each of them alone. */
const alone: ReadonlyMap<string, readonly Check[]> = new Map(counting.map((one) => [one.code, [one]]));

/** Most edits that fail leave what their own check finds, so the others are asked only after it. */
function isBetter({ source, context, judgement }: Analysis, code: string, edit: TextEdit): boolean {
  const own = alone.get(code);
  if (source === null || own === undefined) return false;
  const after = reread(source, edit);
  const before = judgement.findings;
  if (countOf(checkBy(own, after, context), code) >= countOf(before, code)) return false;
  const findings = checkBy(counting, after, context);
  return findings.every((one) => !isLoud(one) || countOf(findings, one.code) <= countOf(before, one.code));
}

const isLoud = ({ severity }: Finding): boolean => severity === 'error' || severity === 'warning';

const countOf = (findings: readonly Finding[], code: string): number =>
  findings.filter((one) => one.code === code).length;
