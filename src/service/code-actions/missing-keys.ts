import { familyOf } from '../../checks/danger.ts';
import { checkOf } from '../../checks/index.ts';
import { lacking } from '../../checks/running/missing-part.ts';
import type { Finding } from '../../note/tree/finding.ts';
import type { Range } from '../../note/tree/tree.ts';
import type { Analysis } from '../analysis/analysis.ts';
import type { OfferedFix } from './offered-fix.ts';
import { insertion, unknownYet } from '../edits/insert.ts';
import type { PlacedMap } from '../../note/tree/maps.ts';

/** A key that a finding misses in a map. */
export interface Missing {
  readonly finding: Finding;
  readonly map: PlacedMap;
  readonly key: string;
}

/**
 * Fixes that put what some findings miss into the note as `??`: each alone, and all that one part lacks.
 * @param mayChange which parts of the note may still be written
 */
export function fills(
  analysis: Analysis,
  asked: readonly Finding[],
  maps: readonly PlacedMap[],
  mayChange: (parts: readonly Range[]) => boolean,
): readonly OfferedFix[] {
  if (!asked.some(({ code }) => checkOf(code)?.misses !== undefined)) return [];
  const whole = maps.filter((map) => isWhole(map, analysis));
  const wanted = asked
    .flatMap((finding) => missingOf(finding, whole) ?? [])
    .filter(({ map }) => mayChange([map.node]));
  const parts = new Set(wanted.map(({ map }) => map));
  if (wanted.length === 0) return [];
  const all = analysis.judgement.findings.flatMap((finding) => missingOf(finding, whole) ?? []);
  return [
    ...wanted.map((one) => fill(analysis, `Add ${one.key} as ??`, [one])),
    ...[...parts].flatMap((part) => {
      const lacking = all.filter(({ map }) => map === part);
      const [first] = lacking;
      if (first === undefined || lacking.length < 2) return [];
      return [fill(analysis, `Add all ${lacking.length} missing keys of this part as ??`, lacking)];
    }),
  ];
}

/** Whether nothing is wrong with the YAML between the brackets of a map: a word more could be read as part of the fault. */
const isWhole = ({ node }: PlacedMap, { judgement }: Analysis): boolean =>
  !node.flow ||
  !judgement.findings.some(
    ({ code, start }) => familyOf(code) === 'yaml' && start >= node.start && start < node.end,
  );

function fill({ text }: Analysis, title: string, missing: readonly Missing[]): OfferedFix {
  const [{ finding, map }] = missing as readonly [Missing, ...Missing[]];
  const order = (key: string): number => map.index.shape.keys.findIndex((one) => one.key === key);
  const keys = [...new Set(missing.map(({ key }) => key))].sort((a, b) => order(a) - order(b));
  return {
    title,
    kind: 'spelling',
    sure: false,
    edits: keys.map((key) => insertion(text, map, unknownYet(key))),
    code: finding.code,
    finding,
    does: 'fill',
  };
}

/** The key that a finding misses, and the map that lacks it. */
function missingOf(finding: Finding, maps: readonly PlacedMap[]): Missing | undefined {
  const key = checkOf(finding.code)?.misses?.(finding);
  const map = lacking(key, finding, maps);
  return key === undefined || map === undefined ? undefined : { finding, map, key };
}
