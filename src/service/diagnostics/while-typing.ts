import { isDanger } from '../../checks/danger.ts';
import { Lines } from '../../note/text/lines.ts';
import type { Finding } from '../../note/tree/finding.ts';

/** What an editor shows while a note is being written. Plain data: each event makes a new one. */
export interface Shown {
  readonly text: string;
  readonly findings: readonly Finding[];
  /** What is missing from a part that is still being written: shown once the caret leaves that part. */
  readonly held: readonly Finding[];
  /** The line that is being typed; undefined while the note rests. */
  readonly typing: number | undefined;
}

/** One change of the text, in offsets of the text before it. */
export interface Change {
  readonly start: number;
  readonly end: number;
  readonly inserted: string;
}

/** The caret, in the text after the change. */
export interface Caret {
  readonly line: number;
  readonly character: number;
}

export type Judge = (text: string) => readonly Finding[];

/** A note that was opened, saved by hand, or checked on demand: everything shows. */
export function atRest(text: string, judge: Judge): Shown {
  return { text, findings: judge(text), held: [], typing: undefined };
}

/**
 * After an edit. While one line is typed nothing new shows: what was on other lines stays, and moves with the text;
 * what was on this line waits. An edit over several lines is judged at once.
 */
export function afterEdit(shown: Shown, text: string, change: Change, caret: Caret, judge: Judge): Shown {
  const severalRows =
    /[\r\n]/.test(change.inserted) || /[\r\n]/.test(shown.text.slice(change.start, change.end));
  if (severalRows) return settled(shown, text, change, caret, judge);
  const row = new Lines(text).at(change.start).line;
  if (shown.typing !== undefined && shown.typing !== row) return settled(shown, text, change, caret, judge);
  const lines = new Lines(text);
  const findings = shown.findings
    .flatMap((finding) => moved(finding, change))
    .filter((finding) => lines.at(finding.start).line !== row);
  return { text, findings, held: shown.held.flatMap((finding) => moved(finding, change)), typing: row };
}

/**
 * When something outside of the note has changed, such as another note of the same patient: all is judged again. A line
 * that is being typed stays quiet; it is judged when it is left, or after a pause.
 */
export function afterNews(shown: Shown, caret: Caret | undefined, judge: Judge): Shown {
  if (shown.typing !== undefined) return shown;
  if (caret === undefined) return atRest(shown.text, judge);
  return settled(shown, shown.text, unchanged, caret, judge);
}

const unchanged: Change = { start: 0, end: 0, inserted: '' };

/** When the caret goes to another line: the line that was typed is finished, and parts that it leaves are asked for what they lack. */
export function afterMove(shown: Shown, caret: Caret, judge: Judge): Shown {
  if (shown.typing === caret.line) return shown;
  if (shown.typing === undefined) return released(shown, caret);
  return settled(shown, shown.text, unchanged, caret, judge);
}

/**
 * A second after the last key: a finished danger shows on its own line, and what the line has fixed elsewhere goes.
 * Only a line that can be read is believed.
 */
export function afterPause(shown: Shown, judge: Judge): Shown {
  if (shown.typing === undefined) return shown;
  const lines = new Lines(shown.text);
  const all = judge(shown.text);
  const onRow = all.filter((finding) => lines.at(finding.start).line === shown.typing);
  if (onRow.some(({ code }) => /^(yaml|shape|quantity)\//.test(code))) return shown;
  const still = new Set(all.map(identity));
  const kept = shown.findings.filter((finding) => still.has(identity(finding)));
  const dangers = onRow.filter((finding) => isDanger(finding));
  return {
    ...shown,
    findings: [...kept.filter((finding) => !dangers.includes(finding)), ...dangers].sort(
      (a, b) => a.start - b.start,
    ),
  };
}

/** Judges the whole note, but does not yet ask for what is missing from the parts that hold the caret. */
function settled(shown: Shown, text: string, change: Change, caret: Caret, judge: Judge): Shown {
  const before = new Set(shown.findings.flatMap((finding) => moved(finding, change)).map(identity));
  const all = judge(text);
  const asked = all.filter((finding) => finding.missingFrom === undefined || before.has(identity(finding)));
  const held = all.filter((finding) => !asked.includes(finding));
  return released({ text, findings: asked, held, typing: undefined }, caret);
}

function released(shown: Shown, caret: Caret): Shown {
  const lines = new Lines(shown.text);
  const held = shown.held.filter(
    ({ missingFrom }) => missingFrom !== undefined && holds(missingFrom, caret, lines),
  );
  if (held.length === shown.held.length) return shown;
  const free = shown.held.filter((finding) => !held.includes(finding));
  return { ...shown, findings: [...shown.findings, ...free].sort(inOrder), held };
}

const inOrder = (a: Finding, b: Finding): number => a.start - b.start;

const identity = ({ code, start, end }: Finding): string => `${code} ${start} ${end}`;

/** Whether the caret is in a part, or on empty lines below it that would still belong to it. */
function holds(part: { readonly start: number; readonly end: number }, caret: Caret, lines: Lines): boolean {
  const first = lines.at(part.start);
  // A part may end with the line break of its last line.
  const last = lines.at(Math.max(part.start, part.end - 1)).line;
  if (caret.line < first.line) return false;
  if (caret.line <= last) return true;
  for (let row = last + 1; row <= caret.line; row++) if (lines.row(row).trim() !== '') return false;
  return caret.character >= first.character;
}

/** A finding after a change before or after it; none where the change reaches into it. */
function moved(finding: Finding, { start, end, inserted }: Change): Finding[] {
  const by = inserted.length - (end - start);
  if (end <= finding.start && !(start === finding.start && end === finding.end))
    return [shifted(finding, by)];
  if (start >= finding.end) return [finding];
  return [];
}

function shifted(finding: Finding, by: number): Finding {
  const shift = <T extends { readonly start: number; readonly end: number }>(range: T): T => ({
    ...range,
    start: range.start + by,
    end: range.end + by,
  });
  return {
    ...shift(finding),
    ...(finding.missingFrom === undefined ? {} : { missingFrom: shift(finding.missingFrom) }),
  };
}
