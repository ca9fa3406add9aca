import type { Finding } from '../note/tree/finding.ts';
import type { Accepted, Event, Injection, Note, Procedure, Specimen } from '../note/generated/types.ts';
import type { Range } from '../note/tree/tree.ts';
import { isFixed } from './danger.ts';

type Accepting = Note | Procedure | Injection | Specimen | Event;

/** A part of the note with the findings that are accepted in it, by code. */
export interface Acceptances extends Range {
  readonly byCode: ReadonlyMap<string, { readonly reason: string; readonly by: string }>;
}

/** The parts of a note that accept findings, the outer ones first. */
function acceptingParts(note: Note): readonly Accepting[] {
  const found: Accepting[] = [];
  addAccepting(note, found);
  addAll(note.anesthetic, found);
  for (const procedure of note.procedures ?? []) {
    addAccepting(procedure, found);
    addAll(procedure.anesthetic, found);
    addAll(procedure.specimen, found);
  }
  for (const event of note.events ?? []) {
    addAccepting(event, found);
    addAll(event.anesthetic, found);
  }
  return found;
}

function addAccepting(part: Accepting, found: Accepting[]): void {
  if (part.accepted !== undefined && part.accepted.length > 0) found.push(part);
}

function addAll(parts: readonly Accepting[] | undefined, found: Accepting[]): void {
  if (parts !== undefined) for (const part of parts) addAccepting(part, found);
}

/** Every acceptance of a note, whether it counts or not. */
export const allAccepted = (note: Note): readonly Accepted[] =>
  acceptingParts(note).flatMap(({ accepted = [] }) => accepted);

/** What a note accepts, the inner parts last. An acceptance without a reason does not count. */
export function acceptancesOf(note: Note): readonly Acceptances[] {
  return acceptingParts(note).map((part) => ({
    // What is missing from a part is reported at its head, which may be the key before its map.
    start: part === note ? 0 : Math.min(part.start, part.head.start),
    end: part === note ? Infinity : Math.max(part.end, part.head.end),
    byCode: new Map((part.accepted ?? []).flatMap(entryOf)),
  }));
}

function entryOf({ check, reason, by }: Accepted): [string, { reason: string; by: string }][] {
  const why = reason?.value?.trim();
  if (check?.value === undefined || why === undefined || why === '') return [];
  return [[check.value.trim(), { reason: why, by: by?.value?.trim() ?? '' }]];
}

/** The finding as the innermost part that accepts it leaves it: information, or marked where it stays as it is. */
export function withAcceptance(finding: Finding, acceptances: readonly Acceptances[]): Finding {
  for (let at = acceptances.length - 1; at >= 0; at--) {
    const { start, end, byCode } = acceptances[at]!;
    const accepted = byCode.get(finding.code);
    if (accepted === undefined || finding.start < start || finding.end > end) continue;
    if (isFixed(finding) || finding.severity === 'hint') return { ...finding, accepted };
    return { ...finding, severity: 'information', accepted };
  }
  return finding;
}
