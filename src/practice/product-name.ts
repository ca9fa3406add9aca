import type { PracticeProduct } from '../note/generated/types.ts';
import { plainWord, type WordTable } from '../note/words/word-table.ts';
import type { AgentRow } from '../reference/agents.ts';

/** What the name of a product says and its row does not. */
export interface NameDiffers {
  readonly form: 'agent' | 'strength' | 'epinephrine';
  /** By the name. */
  readonly named: string;
  /** By the row. */
  readonly own: string;
}

/** Longer names are words, not a strength. */
const longest = 200;

const strength = /(\d{1,4}(?:[.,]\d{1,4})?)\s?(%|mg\s?\/\s?ml)/gi;
const dilution = /\b1\s?:\s?(\d[\d,. ]{2,11}\d)/;
const withEpinephrine = /\b(?:epi|epinephrine|adrenaline)\b/i;
const withoutEpinephrine = /\b(?:plain|(?:no|without|w\/o)\s(?:epi|epinephrine|adrenaline))\b/i;

/**
 * In what the name of a product in stock says another thing than its row: whoever writes the name in a note means what
 * it says. Undefined where they agree, or the name says nothing.
 */
export function nameDiffers(
  name: string,
  product: PracticeProduct,
  agent: AgentRow,
  agents: WordTable<AgentRow>,
): NameDiffers | undefined {
  if (name.length > longest) return undefined;
  return otherAgent(name, agent, agents) ?? otherStrength(name, product) ?? otherEpinephrine(name, product);
}

function otherAgent(name: string, agent: AgentRow, agents: WordTable<AgentRow>): NameDiffers | undefined {
  for (const word of name.split(/[^\p{L}]+/u)) {
    const named = agents.find(word);
    if (named === undefined || named === agent || plainWord(agent.name).includes(plainWord(named.name)))
      continue;
    return { form: 'agent', named: named.name, own: agent.name };
  }
  return undefined;
}

function otherStrength(name: string, { concentration }: PracticeProduct): NameDiffers | undefined {
  const [first, ...more] = [...name.matchAll(strength)];
  const value = concentration?.value;
  if (first === undefined || more.length > 0 || concentration === undefined || value === undefined)
    return undefined;
  const mgPerMl = Number(first[1]!.replace(',', '.')) * (first[2] === '%' ? 10 : 1);
  return isNear(mgPerMl, value.amount)
    ? undefined
    : { form: 'strength', named: first[0], own: concentration.text };
}

function otherEpinephrine(name: string, { epinephrine }: PracticeProduct): NameDiffers | undefined {
  const own = epinephrine === undefined ? 0 : epinephrine.value?.microgramsPerMl;
  const said = own === undefined ? undefined : namedEpinephrine(name);
  if (said === undefined || own === undefined || said.fits(own)) return undefined;
  return { form: 'epinephrine', named: said.named, own: epinephrine?.text ?? 'no epinephrine' };
}

interface Named {
  readonly named: string;
  /** Whether so many µg/mL are what is named. */
  readonly fits: (own: number) => boolean;
}

function namedEpinephrine(name: string): Named | undefined {
  const [whole, digits = ''] = dilution.exec(name) ?? [];
  if (whole !== undefined) {
    const named = 1_000_000 / Number(digits.replace(/[,. ]/g, ''));
    return { named: whole, fits: (own) => isNear(named, own) };
  }
  const without = withoutEpinephrine.exec(name)?.[0];
  if (without !== undefined) return { named: without, fits: (own) => own === 0 };
  const named = withEpinephrine.exec(name)?.[0];
  return named === undefined ? undefined : { named, fits: (own) => own > 0 };
}

const isNear = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-6 * Math.max(a, b);
