import {
  appliesTo,
  ceilingBy,
  rulesFrom,
  type Ceiling,
  type Facts,
  type Rules,
} from '../practice/ceilings.ts';
import type { Tables } from '../practice/tables.ts';
import type { LimitRow } from '../reference/limits.ts';

const built = new WeakMap<Tables, Rules>();

/** The limits of tables, sorted once and kept. */
export function rulesOf(tables: Tables): Rules {
  let rules = built.get(tables);
  if (rules === undefined) built.set(tables, (rules = rulesFrom(tables)));
  return rules;
}

/**
 * The limits for a patient that stand beside the ceiling of an agent: those of the country's guidelines, with the
 * reduction for infants, or those of everyone else.
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
): readonly Ceiling[] {
  const found = rules.of(agent, epinephrine)[list].flatMap((row) => {
    if (!appliesTo(row.population, facts)) return [];
    return [row.notRecommended ? { ...ceilingBy(row, facts.kg), limitMg: 0 } : ceilingBy(row, facts.kg)];
  });
  const { infantReduction: infant } = tables;
  if (list === 'others' || facts.months === undefined || facts.months >= infant.belowMonths) return found;
  if (tables.agents.find(agent)?.class !== infant.class) return found;
  const reduced: LimitRow = {
    ...ceiling,
    ...(ceiling.mgPerKg === undefined ? {} : { mgPerKg: ceiling.mgPerKg * infant.factor }),
    ...(ceiling.capMg === undefined ? {} : { capMg: ceiling.capMg * infant.factor }),
    population: { text: `under ${infant.belowMonths} months, 30% less`, belowMonths: infant.belowMonths },
    authority: infant.authority,
    source: infant.source,
    mark: infant.mark,
    asOf: infant.asOf,
  };
  return [...found, ceilingBy(reduced, facts.kg)];
}
