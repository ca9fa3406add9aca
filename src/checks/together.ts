import type { Note } from '../note/generated/types.ts';
import type { Finding, Related } from '../note/tree/finding.ts';
import type { Range } from '../note/tree/tree.ts';
import { checkOf } from './index.ts';
import { notRecorded } from './record/judging.ts';

/** What a finding says to be missing that is asked for under more than one key. */
const otherNames: ReadonlyMap<string, string> = new Map([['site/hard-to-find', 'landmarks or a photo']]);

/** What is missing by a finding that is only information and that nobody has accepted; undefined for any other. */
function lackOf(finding: Finding): string | undefined {
  if (finding.severity !== 'information' || finding.accepted !== undefined) return undefined;
  return otherNames.get(finding.code) ?? checkOf(finding.code)?.misses?.(finding);
}

/**
 * Findings as people are shown them: what one procedure, or the visit, lacks at the level of information is one finding
 * that lists it, and what holds alike for several procedures is one with its places. Each single finding stays what it is
 * for fixes, for accepting, and for machines.
 */
export function together<Found extends Finding>(
  findings: readonly Found[],
  note: Note | null,
): readonly (Found | Finding)[] {
  const lacking = new Map<Range | undefined, Finding[]>();
  const procedures = note?.procedures ?? [];
  for (const finding of findings) {
    if (lackOf(finding) === undefined) continue;
    const part = procedures.find((one) => isIn(finding, one));
    const same = lacking.get(part);
    if (same === undefined) lacking.set(part, [finding]);
    else same.push(finding);
  }
  const merged = new Map<Finding, Finding | undefined>();
  const byList = new Map<string, Finding[][]>();
  for (const [part, group] of lacking) {
    const key = part === undefined ? '' : group.map(({ code }) => code).join();
    byList.set(key, [...(byList.get(key) ?? []), group]);
  }
  for (const groups of byList.values()) {
    const all = groups.flat();
    if (all.length < 2) continue;
    for (const one of all) merged.set(one, undefined);
    merged.set(all[0]!, oneOf(groups));
  }
  return findings.flatMap((finding) => (merged.has(finding) ? (merged.get(finding) ?? []) : [finding]));
}

const isIn = ({ start }: Range, { head, start: from, end }: Range & { readonly head: Range }): boolean =>
  start >= Math.min(head.start, from) && start < Math.max(head.end, end);

/** The finding that lists what the first of some parts lacks, with the places where the others lack the same. */
function oneOf(groups: readonly (readonly Finding[])[]): Finding {
  const [first = [], ...others] = groups;
  const [{ start, end }] = first as readonly [Finding];
  const names = (some: readonly Finding[]): string => [...new Set(some.map((one) => lackOf(one)))].join(', ');
  const elsewhere = first.filter((one) => one.start !== start);
  const related: Related[] = [
    ...elsewhere.map((one) => ({ ...rangeOf(one), form: 'here', args: { what: names([one]) } })),
    ...others.map((group) => ({ ...rangeOf(group[0]!), form: 'again', args: { what: names(group) } })),
  ];
  const { code, severity } = notRecorded;
  return { code, severity, start, end, form: 'main', args: { what: names(first) }, related };
}

const rangeOf = ({ start, end }: Range): Range => ({ start, end });
