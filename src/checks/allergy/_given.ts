import { agentOf, productOf } from '../../dose/injections.ts';
import type { InjectedDrug, Injection } from '../../note/generated/types.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import type { Range } from '../../note/tree/tree.ts';
import type { StockProduct } from '../../practice/tables.ts';
import type { AgentRow } from '../../reference/agents.ts';
import type { Subject } from '../check.ts';
import { shared } from '../shared.ts';
import { rowsIn } from '../words.ts';

/** An anesthetic that was given, with what is known of its product. */
export interface GivenAgent {
  readonly injection: Injection;
  readonly agent: AgentRow;
  readonly product: StockProduct | undefined;
  /** Where the note names it. */
  readonly at: Range;
}

/** Every anesthetic of the visit and of later events that names a known agent; read once for a note. */
export const givenAgents = shared((subject: Subject): readonly GivenAgent[] => {
  const { note, tables } = subject;
  const found: GivenAgent[] = [];
  addGiven(note.anesthetic, tables, found);
  for (const { anesthetic, injected = [] } of [...(note.procedures ?? []), ...(note.events ?? [])]) {
    addGiven(anesthetic, tables, found);
    // What is under `injected` counts as what it is.
    for (const one of injected)
      if (one.drug !== undefined) addGiven([asInjection(one, one.drug)], tables, found);
  }
  return found;
});

const asInjection = ({ start, end, head, keys }: InjectedDrug, agent: Leaf<string>): Injection => ({
  start,
  end,
  head,
  keys,
  agent,
});

function addGiven(
  injections: readonly Injection[] | undefined,
  tables: Subject['tables'],
  found: GivenAgent[],
): void {
  for (const injection of injections ?? []) {
    const agent = agentOf(injection, tables) ?? rowsIn(tables.agents, injection.agent)[0];
    if (agent === undefined) continue;
    const at = injection.agent ?? injection.product ?? injection.head;
    found.push({ injection, agent, product: productOf(injection, tables), at });
  }
}

/**
 * Where the note says that there is epinephrine in it; undefined where there is none. What can't be read counts:
 * somebody wrote it.
 */
export function epinephrineAt({ injection, product, at }: GivenAgent): Range | undefined {
  const leaf = injection.epinephrine;
  if (leaf === undefined) return (product?.epinephrineMicrogramsPerMl ?? 0) > 0 ? at : undefined;
  if (leaf.pending) return undefined;
  return leaf.value === undefined || leaf.value.microgramsPerMl > 0 ? leaf : undefined;
}
