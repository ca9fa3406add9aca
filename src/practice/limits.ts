import type { PracticeApproval, PracticeLimit } from '../note/generated/types.ts';
import type { WordTable } from '../note/words/word-table.ts';
import type { AgentRow } from '../reference/agents.ts';
import type { LimitRow, Population } from '../reference/limits.ts';
import {
  adultFigures,
  rulesFrom,
  type Figures,
  type Published,
  type LimitBook,
  type Rules,
} from '../limits/ceilings.ts';
import type { Faults } from './faults.ts';
import { defined, textOf } from './leaves.ts';
import { knownAgent } from './stock.ts';

/** Who means a limit that is looser than the published one. */
export interface Approval {
  readonly by: string;
  readonly on: string;
  readonly reason: string;
}

/** A safety limit that the practice has loosened; every summary says so. */
export interface Loosened {
  readonly agent: string;
  readonly epinephrine: boolean;
  readonly mgPerKg: number | undefined;
  readonly capMg: number | undefined;
  /** What is published for adults, and by whom. */
  readonly published: Published;
  /** The practice's own word on where the limit is from; empty where it says none. */
  readonly source: string;
  readonly approval: Approval;
}

export interface PracticeLimits {
  readonly limits: readonly LimitRow[];
  readonly loosened: readonly Loosened[];
}

/** What the overlay of limits goes by. */
export interface LimitBase extends LimitBook {
  readonly agents: WordTable<AgentRow>;
  /** Whether the file may loosen: not in restricted mode. */
  readonly trusted: boolean;
}

const anyAge: Population = { text: 'any age' };
/** What is approved for adults is not approved for children: the file has no way to say so. */
const adults: Population = { text: 'adults', fromMonths: 216 };

/** The approval, where it names who, when and why; otherwise undefined. */
export function approvalOf(approved: PracticeApproval | undefined): Approval | undefined {
  const by = textOf(approved?.by);
  const on = approved?.on?.value;
  const reason = textOf(approved?.reason);
  return by === '' || reason === '' || on === undefined ? undefined : { by, on, reason };
}

/** A limit of the practice as a row beside the published ones. */
export function practiceRow(
  agent: string,
  epinephrine: boolean,
  { mgPerKg, capMg }: Figures,
  authority: string,
  approval?: Approval,
): LimitRow {
  return {
    agent,
    epinephrine,
    authority,
    population: approval === undefined ? anyAge : adults,
    ...defined({ mgPerKg, capMg }),
    practice: approval === undefined ? 'stricter' : 'approved',
    source: 'practice-file',
    mark: 'format',
    asOf: approval?.on ?? '',
  };
}

/** The limits with those of the practice beside them: stricter ones at once, looser ones only with an approval. */
export function limitsOf(
  entries: readonly PracticeLimit[] | undefined,
  base: LimitBase,
  faults: Faults,
): PracticeLimits {
  // The practice's own rows are what is compared, not what it is compared with.
  const published = rulesFrom({ ...base, limits: base.limits.filter((row) => row.practice === undefined) });
  const laid = (entries ?? []).flatMap((entry) => laidOver(entry, base, published, faults));
  return {
    limits: laid.length === 0 ? base.limits : [...base.limits, ...laid.map(({ row }) => row)],
    loosened: laid.flatMap(({ loosened }) => (loosened === undefined ? [] : [loosened])),
  };
}

interface Laid {
  readonly row: LimitRow;
  readonly loosened?: Loosened;
}

function laidOver(entry: PracticeLimit, base: LimitBase, rules: Rules, faults: Faults): readonly Laid[] {
  const agent = knownAgent(entry.agent, base.agents, faults);
  if (entry.agent === undefined) faults.add('limit-without-number', entry.head, {}, 'agent');
  if (agent === undefined) return [];
  const figures = { mgPerKg: entry.maxMgPerKg?.value, capMg: entry.maxMg?.value };
  if (figures.mgPerKg === undefined && figures.capMg === undefined) {
    if (!entry.keys.has('max-mg-per-kg') && !entry.keys.has('max-mg'))
      faults.add('limit-without-number', entry.head, { agent: agent.name });
    return [];
  }
  // A yes or no that can't be read has its own finding; the limit then holds for both kinds.
  const kinds = entry.epinephrine?.value === undefined ? [false, true] : [entry.epinephrine.value];
  return kinds.map((epinephrine) => {
    const published = adultFigures(rules, agent.name, epinephrine);
    const approval = approvalOfLooser(
      entry,
      { agent: agent.name, epinephrine, figures, published },
      base,
      faults,
    );
    if (approval === undefined) return { row: practiceRow(agent.name, epinephrine, figures, base.authority) };
    // Where only one figure is loosened, the published one still holds beside it.
    const mgPerKg = figures.mgPerKg ?? published.mgPerKg;
    const capMg = figures.capMg ?? published.capMg;
    return {
      row: practiceRow(agent.name, epinephrine, { mgPerKg, capMg }, base.authority, approval),
      loosened: {
        agent: agent.name,
        epinephrine,
        mgPerKg,
        capMg,
        published,
        source: textOf(entry.source),
        approval,
      },
    };
  });
}

interface Compared {
  readonly agent: string;
  readonly epinephrine: boolean;
  readonly figures: Figures;
  readonly published: Published;
}

/** The approval of a looser limit; undefined for a stricter one, and where a looser one may not be used. */
function approvalOfLooser(
  entry: PracticeLimit,
  { agent, epinephrine, figures, published }: Compared,
  { trusted }: LimitBase,
  faults: Faults,
): Approval | undefined {
  const looser = looserFigure(figures, published);
  if (looser === undefined) return undefined;
  const at = (looser.key === 'mgPerKg' ? entry.maxMgPerKg : entry.maxMg) ?? entry.head;
  const approval = approvalOf(entry.approved);
  const product = `${agent} ${epinephrine ? 'with' : 'without'} epinephrine`;
  const { key, value, most } = looser;
  if (approval === undefined)
    faults.add(
      'looser-limit',
      at,
      { product, value, ...(most === undefined ? {} : { most }) },
      most === undefined ? 'none' : key,
    );
  else if (!trusted) faults.add('loosening-ignored', at, { product });
  return trusted ? approval : undefined;
}

interface LooserFigure {
  readonly key: 'mgPerKg' | 'capMg';
  readonly value: number;
  /** What is published; undefined where nothing is. */
  readonly most: number | undefined;
}

function looserFigure(figures: Figures, published: Figures): LooserFigure | undefined {
  const unknown = published.mgPerKg === undefined && published.capMg === undefined;
  for (const key of ['mgPerKg', 'capMg'] as const) {
    const value = figures[key];
    const most = published[key];
    // A limit where none is published makes a dose pass that could not be judged before.
    if (value !== undefined && (unknown || (most !== undefined && value > most))) return { key, value, most };
  }
  return undefined;
}
