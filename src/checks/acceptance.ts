import type { Finding } from '../note/finding.ts';
import type { Accepted, Event, Injection, Note, Procedure, Specimen } from '../note/generated/types.ts';
import type { Range } from '../note/tree.ts';
import { isFixed } from './danger.ts';

type Accepting = Note | Procedure | Injection | Specimen | Event;

/** A part of the note with the findings that are accepted in it, by code. */
export interface Acceptances extends Range {
  readonly byCode: ReadonlyMap<string, { readonly reason: string; readonly by: string }>;
}

/** The parts of a note that can accept findings, the outer ones first. */
export function* acceptingParts(note: Note): Generator<Accepting> {
  yield note;
  yield* note.anesthetic ?? [];
  for (const procedure of note.procedures ?? []) {
    yield procedure;
    yield* procedure.anesthetic ?? [];
    yield* procedure.specimen ?? [];
  }
  for (const event of note.events ?? []) {
    yield event;
    yield* event.anesthetic ?? [];
  }
}

/** What a note accepts, the inner parts last. An acceptance without a reason does not count. */
export function acceptancesOf(note: Note): readonly Acceptances[] {
  const found: Acceptances[] = [];
  for (const part of acceptingParts(note)) {
    const accepted = part.accepted;
    if (accepted === undefined || accepted.length === 0) continue;
    // What is missing from a part is reported at its head, which may be the key before its map.
    const start = part === note ? 0 : Math.min(part.start, part.head.start);
    const end = part === note ? Infinity : Math.max(part.end, part.head.end);
    found.push({ start, end, byCode: new Map(accepted.flatMap(entryOf)) });
  }
  return found;
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
