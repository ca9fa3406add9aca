import { once } from '../note/text/once.ts';
import {
  appliesTo,
  ceilingBy,
  ceilingOf,
  limitAt,
  rulesFrom,
  type Ceiling,
  type Facts,
  type Rules,
} from '../limits/ceilings.ts';
import type { Tables } from '../practice/tables.ts';
import type { LimitRow } from '../reference/limits.ts';

/** The limits of tables, sorted once and kept. */
export const rulesOf = once((tables: Tables): Rules => rulesFrom(tables));

const publishedRules = once((tables: Tables): Rules =>
  rulesFrom({ ...tables, limits: tables.limits.filter(({ practice }) => practice === undefined) }),
);

/** The ceiling that a patient would have without the limits of the practice. */
export const publishedCeiling = (
  agent: string,
  epinephrine: boolean,
  facts: Facts,
  tables: Tables,
): Ceiling | undefined => ceilingOf(publishedRules(tables), agent, epinephrine, facts);

/**
 * The limits for a patient that are beside the ceiling of an agent: those of the country's guidelines, with the
 * reduction for infants, or those of everyone else.
 * @param above an amount in mg: of the published limits only those below it are worked out
 */
export function advisoryCeilings(
  rules: Rules,
  {
    agent,
    epinephrine,
    limit: ceiling,
  }: Pick<LimitRow, 'agent' | 'epinephrine'> & { readonly limit: LimitRow },
  facts: Facts,
  list: 'advisories' | 'others',
  tables: Tables,
  above = Infinity,
): readonly Ceiling[] {
  const { kg } = facts;
  const found: Ceiling[] = [];
  for (const row of rules.of(agent, epinephrine)[list]) {
    if (row.notRecommended !== true && limitAt(row, kg) > above) continue;
    if (!appliesTo(row.population, facts)) continue;
    const byRow = ceilingBy(row, kg);
    found.push(row.notRecommended ? { ...byRow, limitMg: 0 } : byRow);
  }
  const reduced = list === 'advisories' ? infantLimit(agent, ceiling, facts, tables) : undefined;
  if (reduced !== undefined) found.push(ceilingBy(reduced, kg));
  return found;
}

/** The ceiling with what the guidelines take off for the youngest; undefined for everyone else. */
function infantLimit(
  agent: string,
  ceiling: LimitRow,
  { months }: Facts,
  { infantReduction: infant, agents }: Tables,
): LimitRow | undefined {
  if (months === undefined || months >= infant.belowMonths) return undefined;
  if (agents.find(agent)?.class !== infant.class) return undefined;
  return {
    ...ceiling,
    ...(ceiling.mgPerKg === undefined ? {} : { mgPerKg: ceiling.mgPerKg * infant.factor }),
    ...(ceiling.capMg === undefined ? {} : { capMg: ceiling.capMg * infant.factor }),
    population: { text: `under ${infant.belowMonths} months, 30% less`, belowMonths: infant.belowMonths },
    authority: infant.authority,
    source: infant.source,
    mark: infant.mark,
    asOf: infant.asOf,
  };
}
