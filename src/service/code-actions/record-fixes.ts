import type { Finding, Fix, TextEdit } from '../../note/tree/finding.ts';
import { reread } from '../../note/reread.ts';
import type { KeyShape } from '../../note/tree/shape.ts';
import type { Range, TextNode } from '../../note/tree/tree.ts';
import { catalogue, checkBy, type Check } from '../../checks/index.ts';
import { shareOf } from '../../checks/dose/_days.ts';
import type { Analysis } from '../analysis/analysis.ts';
import { locate, type Place } from '../analysis/locate.ts';
import { inMl, pointMoved, redated, tenth, weaker, workingDay } from './alternatives.ts';
import type { Reread, Rereading } from './alternatives.ts';
import { rowsOfTable } from '../analysis/words.ts';

/** What a record may say wrongly where a check finds something. */
interface Correction {
  /** The only forms of the finding that leave the value in doubt; all where none is named. */
  readonly forms?: readonly string[];
  /** How else what was typed may be read, the likeliest first. */
  readonly again?: readonly Rereading[];
  /** Whether `??` is offered though a milder finding that this one covers may then show. */
  readonly covers?: true;
}

/** The value that a finding is about, or in which it stands. */
interface Said {
  readonly analysis: Analysis;
  readonly finding: Finding;
  readonly node: TextNode;
  readonly place: Place;
}

/**
 * Fixes that change what is said to have been done. A ready value is offered only where it is another reading of what
 * was typed (a decimal point, a unit, a year, day and month swapped) or a plan; otherwise the value gives way to `??`, and
 * somebody has to write what was so. A value that only fits, as the largest volume that is allowed, never stands ready.
 * The gap comes first, since the first of several is one key away. Each leaves the note without the finding and with no
 * other in its place, but for what it covered.
 */
export function correctionsOf(analysis: Analysis, finding: Finding): readonly Fix[] {
  const correction = corrections.get(finding.code);
  if (correction === undefined || correction.forms?.includes(finding.form) === false) return [];
  const said = saidAt(analysis, finding);
  if (said === undefined) return [];
  const again = (correction.again ?? []).flatMap((reread) => rereads(said, reread));
  const settled = again.filter((fix) => settles(said, fix));
  const open = unknown(said).filter((fix) => correction.covers === true || settles(said, fix));
  return [...open, ...settled];
}

function saidAt(analysis: Analysis, finding: Finding): Said | undefined {
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
function unknown({ node, place, ...said }: Said): readonly Fix[] {
  const key = valueKey(place, said.analysis);
  return single.has(key?.reads) || isOneWord({ node, place, ...said }, key)
    ? [record(`${place.key?.key ?? 'this'} as ??`, node, '??')]
    : [];
}

/** The key that a bare text stands for, where it takes the place of a map with one key. */
function valueKey({ key }: Place, { shapes }: Analysis): KeyShape | undefined {
  if (key?.map === undefined || key.text === undefined) return key;
  return shapes.get(key.map)?.byName.get(key.text) ?? key;
}

/** Readers that take a text as one value; another text may say more than what is in doubt. */
const single: ReadonlySet<string | undefined> = new Set([
  ...['date', 'moment', 'occasion', 'volume', 'mass', 'length', 'area', 'concentration', 'dilution'],
  ...['mixture', 'dimensions', 'sutureSize', 'count'],
]);

/** Whether a text is the finding's word and no more; where the key has a table of words, one of these. */
function isOneWord({ analysis, finding, node }: Said, key: KeyShape | undefined): boolean {
  if (finding.start !== node.start || finding.end !== node.end) return false;
  const rows = rowsOfTable(analysis.context.tables, key?.words);
  const typed = node.text.trim().toLowerCase();
  const words = rows.flatMap(({ name, synonyms }) => [name, ...synonyms]);
  return words.length === 0 || words.some((word) => word.toLowerCase() === typed);
}

/** What a rereading makes of the characters that a finding marks. */
function rereads({ analysis, finding, node, place }: Said, reread: Rereading): readonly Fix[] {
  const quote = /^["']/.exec(analysis.text.slice(finding.start, finding.end))?.[0] ?? '';
  const at = { start: finding.start + quote.length, end: finding.end - quote.length };
  const typed = analysis.text.slice(at.start, at.end);
  return reread({ analysis, at: finding, typed, whole: node.text }).map((found) =>
    record(found.beside ?? found.text, at, written(found, quote, place)),
  );
}

/** Between brackets a comma would end a plain value. */
const written = ({ text }: Reread, quote: string, { around }: Place): string =>
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
function settles({ analysis, finding: { code } }: Said, { edits }: Fix): boolean {
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

/** A slipped point stands to reason where an injection is over the limit all by itself, not where the sum is. */
const tenthOfAlone: Rereading = (doubted) => {
  const { dose } = doubted.analysis.judgement;
  const days = dose === null ? [] : [dose, ...dose.later];
  const alone = days.some((day) =>
    day.given.some((one) => one.at.start === doubted.at.start && shareOf(one, day) > 1),
  );
  return alone ? tenth(doubted) : [];
};

const date: Correction = { again: [redated] };
const dateOfStitches: Correction = { again: [redated, workingDay] };
const value: Correction = {};

/** What may be wrong in the record, by the check that finds it. */
const corrections: ReadonlyMap<string, Correction> = new Map<string, Correction>([
  ['dose/over-limit', { again: [tenthOfAlone], covers: true }],
  ['dose/cream-over-limit', { forms: ['main'] }],
  ['dose/concentration-not-made', { forms: ['main', 'unit'] }],
  ['dose/epinephrine-too-strong', { again: [weaker] }],
  ['dose/bupivacaine-buffered', value],
  ['dose/methemoglobin', value],
  ['dose/epinephrine-end-artery', value],
  ['dose/epinephrine-care', { forms: ['any'] }],
  ['dose/product-differs', value],
  ['quantity/implausible', { again: [pointMoved, redated] }],
  ['quantity/wrong-unit', { again: [inMl] }],
  ['quantity/no-such-date', date],
  ['allergy/agent', value],
  ['allergy/same-class', value],
  ['allergy/preservative', { forms: ['main'] }],
  ['allergy/sulfite', value],
  ['allergy/epinephrine', value],
  ['allergy/hemostatic', value],
  ['allergy/preparation', value],
  ['allergy/dressing', value],
  ['allergy/closure', value],
  ['device/electrosurgery', value],
  ['hemostasis/near-eye', value],
  ['hemostasis/fire', value],
  ['hemostasis/flammable-spray', value],
  ['hemostasis/iron-stain', value],
  ['closure/glue-place', value],
  ['closure/odd-suture-size', value],
  ['closure/stitch-count', value],
  ['dressing/ointment-on-glue', value],
  ['method/punch-size', { again: [tenth] }],
  // What lies in a medium that destroys it is not mended by another word.
  ['specimen/wrong-medium', { forms: ['poor'] }],
  ['specimen/too-long-in-medium', date],
  ['specimen/duplicate-label', value],
  ['record/dates-out-of-order', date],
  ['record/date-in-future', date],
  ['record/born-after-visit', date],
  ['closure/removal-before-visit', dateOfStitches],
  ['closure/removal-early', dateOfStitches],
  ['closure/removal-late', dateOfStitches],
  ['closure/removal-on-closed-day', { again: [workingDay] }],
]);

/** The checks whose findings may be about a record that is wrong. */
export const correctable: readonly string[] = [...corrections.keys()];
