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

/** Where a finding is: a procedure, or undefined for what concerns the visit. */
type PartOf = (finding: Finding) => Range | undefined;

/**
 * Findings as people are shown them: what one procedure, or the visit, lacks at the level of information is one finding
 * that lists it, and what holds alike for several procedures is one with its places. Each single finding stays what it is
 * for fixes, for accepting, and for machines.
 * @param apart whether the visit is kept apart from an only procedure too, as while parts are still being written
 */
export function together(findings: readonly Finding[], note: Note | null, apart = false): readonly Finding[] {
  const procedures = note?.procedures ?? [];
  const only = apart || procedures.length !== 1 ? undefined : procedures[0];
  const procedureOf: PartOf = (finding) => procedures.find((one) => isIn(finding, one));
  const partOf: PartOf = (finding) => procedureOf(finding) ?? only;
  const missingFrom = (finding: Finding): Range => rangeOf(procedureOf(finding) ?? note ?? finding);
  const merged = new Map<Finding, Finding | undefined>();
  for (const groups of [...lackingAlike(findings, partOf), ...sayingAlike(findings, partOf)]) {
    const all = groups.flat();
    if (all.length < 2) continue;
    for (const one of all) merged.set(one, undefined);
    const [first] = all as [Finding];
    merged.set(
      first,
      lackOf(first) === undefined ? withPlaces(all) : { ...oneOf(groups), missingFrom: missingFrom(first) },
    );
  }
  if (merged.size === 0) return findings;
  return findings.flatMap((finding) => (merged.has(finding) ? (merged.get(finding) ?? []) : [finding]));
}

/** What parts lack, part by part, those together that lack the same. */
function lackingAlike(
  findings: readonly Finding[],
  partOf: PartOf,
): Iterable<readonly (readonly Finding[])[]> {
  const byPart = new Map<Range | undefined, Finding[]>();
  for (const finding of findings) if (lackOf(finding) !== undefined) add(byPart, partOf(finding), finding);
  const byList = new Map<string, Finding[][]>();
  for (const [part, group] of byPart)
    add(byList, part === undefined ? '' : group.map(({ code }) => code).join(), group);
  return byList.values();
}

/** Information that is said of several procedures in the same words. */
function sayingAlike(
  findings: readonly Finding[],
  partOf: PartOf,
): Iterable<readonly (readonly Finding[])[]> {
  const byWords = new Map<string, Finding[][]>();
  for (const finding of findings) {
    const { severity, accepted, code, form, args } = finding;
    const part = partOf(finding);
    if (severity !== 'information' || accepted !== undefined || part === undefined) continue;
    if (lackOf(finding) !== undefined) continue;
    const key = JSON.stringify([code, form, args]);
    const same = byWords.get(key)?.some(([one]) => one !== undefined && partOf(one) === part) === true;
    if (!same) add(byWords, key, [finding]);
  }
  return byWords.values();
}

function add<Key, Value>(groups: Map<Key, Value[]>, key: Key, value: Value): void {
  const group = groups.get(key);
  if (group === undefined) groups.set(key, [value]);
  else group.push(value);
}

/** The first of some findings that say the same, with the places of the others. */
function withPlaces([first, ...others]: readonly Finding[]): Finding {
  const places = others.map((one) => ({ ...rangeOf(one), form: first!.form, args: first!.args }));
  return { ...first!, related: [...first!.related, ...places] };
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
