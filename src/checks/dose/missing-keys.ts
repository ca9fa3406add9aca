import type { Report } from '../../note/tree/finding.ts';
import { agentOf, isCreamByAmount, productOf } from '../../dose/injections.ts';
import type { Injection } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';
import type { AgentForm, AgentRow } from '../../reference/agents.ts';
import type { Check, Subject } from '../check.ts';
import { injectionsOf } from './_days.ts';
import { format } from '../sources.ts';

interface Row {
  readonly code: string;
  readonly misses: NonNullable<Check['misses']>;
  readonly title: string;
  readonly why: string;
  readonly messages: Check['messages'];
  /** The form of what is missing, or undefined where nothing is. */
  readonly lacks: (injection: Injection, agent: AgentRow | undefined, tables: Tables) => string | undefined;
}

/** How it was given; what is not known is taken for an injection, unless it has the amount of a cream. */
function formOf(injection: Injection, agent: AgentRow | undefined): AgentForm {
  if (agent === undefined)
    return injection.amount !== undefined && injection.volume === undefined ? 'cream' : 'injected';
  return isCreamByAmount(injection, agent) ? 'cream' : agent.form;
}

const has = ({ keys }: Injection, key: string): boolean => keys.has(key);

const rows: readonly Row[] = [
  {
    code: 'dose/agent-missing',
    misses: () => 'agent',
    title: 'An injection without the name of its drug',
    why: 'Without the drug neither the dose nor an allergy can be checked.',
    messages: {
      main: 'This anesthetic has no name. Write `agent` with the generic name, such as lidocaine.',
    },
    lacks: (injection) => (has(injection, 'agent') || has(injection, 'product') ? undefined : 'main'),
  },
  {
    code: 'dose/concentration-missing',
    misses: () => 'concentration',
    title: 'An injection without its strength',
    why: 'The same volume contains twice the drug at twice the strength, so that the dose can’t be judged.',
    messages: {
      main: 'This {name} has no strength, so its dose can’t be judged. Write `concentration`, such as 1%.',
    },
    lacks(injection, agent, tables) {
      if (formOf(injection, agent) !== 'injected' || has(injection, 'concentration')) return undefined;
      // A product that is not in stock has its own finding.
      if (has(injection, 'product') && agent === undefined) return undefined;
      return productOf(injection, tables)?.mgPerMl === undefined ? 'main' : undefined;
    },
  },
  {
    code: 'dose/volume-missing',
    misses: ({ form }) => (form === 'cream' ? 'amount' : 'volume'),
    title: 'An injection without its volume, or a cream without its amount',
    why: 'Without the amount the dose can’t be judged.',
    messages: {
      main: 'This {name} has no volume, so its dose can’t be judged. Write `volume` in mL.',
      cream: 'This {name} has no amount, so it can’t be judged. Write `amount` in g.',
    },
    lacks(injection, agent) {
      const form = formOf(injection, agent);
      if (form === 'spray') return undefined;
      if (form === 'cream') return has(injection, 'amount') ? undefined : 'cream';
      return has(injection, 'volume') ? undefined : 'main';
    },
  },
];

/** Nothing but a word that means no product: its own finding says so, or it is not known yet. */
const isBareName = (injection: Injection, agent: AgentRow | undefined): boolean =>
  agent === undefined &&
  injection.keys.size === 1 &&
  (injection.product !== undefined || injection.agent?.pending === true);

function missing({ lacks }: Row, { dose, tables }: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const injection of injectionsOf(dose)) {
    const agent = agentOf(injection, tables);
    const form = isBareName(injection, agent) ? undefined : lacks(injection, agent, tables);
    if (form === undefined) continue;
    found.push({ at: injection.head, form, args: { name: agent?.name ?? 'anesthetic' } });
  }
  return found;
}

export const checks: readonly Check[] = rows.map(({ lacks, ...row }) => ({
  ...row,
  severity: 'error',
  sources: [format],
  find: (subject) => missing({ lacks, ...row }, subject),
}));
