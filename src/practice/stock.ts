import type { PracticeProduct } from '../note/generated/types.ts';
import type { Leaf } from '../note/tree/leaf.ts';
import type { Mixture } from '../note/values/values.ts';
import { plainWord, type WordTable } from '../note/words/word-table.ts';
import type { AgentRow } from '../reference/agents.ts';
import type { Faults } from './faults.ts';
import { defined, isUnread, textOf, textsOf } from './leaves.ts';
import { nameDiffers } from './product-name.ts';

/** A product that the practice keeps in stock, as its name means it in a note. */
export interface StockProduct {
  /** As the practice file writes it. */
  readonly name: string;
  readonly agent: AgentRow;
  /** Undefined where the practice file gives no strength. */
  readonly mgPerMl: number | undefined;
  /** As drawn, 0 without epinephrine. */
  readonly epinephrineMicrogramsPerMl: number;
  readonly buffered?: Mixture;
  /** Absent where the file does not say it; so too the two below. */
  readonly preservativeFree?: boolean;
  readonly preservatives?: readonly string[];
  readonly sulfite?: boolean;
}

/**
 * The products by their plain names. Left out is what names no known agent, what has a strength or dilution that
 * can't be read, what its name says otherwise, and what takes a name for the second time: a note that uses it is then told that it is unknown.
 */
export function stockOf(
  products: readonly PracticeProduct[] | undefined,
  agents: WordTable<AgentRow>,
  faults: Faults,
): ReadonlyMap<string, StockProduct> {
  const stock = new Map<string, StockProduct>();
  for (const product of products ?? []) {
    const name = textOf(product.product);
    const agent = knownAgent(product.agent, agents, faults);
    if (product.product === undefined || name === '' || agent === undefined) continue;
    if (isUnread(product.concentration) || isUnread(product.epinephrine)) continue;
    const differs = nameDiffers(name, product, agent, agents);
    if (differs !== undefined)
      faults.add('product-differs', product.product, { product: name, ...differs }, differs.form);
    else if (stock.has(plainWord(name))) faults.add('repeated-product', product.product, { product: name });
    else stock.set(plainWord(name), rowOf(name, agent, product));
  }
  return stock;
}

/** The agent that a text names; one that is not known is a fault. */
export function knownAgent(
  leaf: Leaf<string> | undefined,
  agents: WordTable<AgentRow>,
  faults: Faults,
): AgentRow | undefined {
  const word = textOf(leaf);
  const agent = agents.find(word);
  if (leaf !== undefined && word !== '' && agent === undefined)
    faults.unknown('unknown-agent', leaf, word, agents.words);
  return agent;
}

function rowOf(name: string, agent: AgentRow, product: PracticeProduct): StockProduct {
  const { concentration, epinephrine, buffered, preservativeFree, preservatives, sulfite } = product;
  return {
    name,
    agent,
    mgPerMl: concentration?.value?.amount,
    epinephrineMicrogramsPerMl: epinephrine?.value?.microgramsPerMl ?? 0,
    ...defined({
      buffered: buffered?.value,
      preservativeFree: preservativeFree?.value,
      preservatives: preservatives && textsOf(preservatives),
      sulfite: sulfite?.value,
    }),
  };
}
