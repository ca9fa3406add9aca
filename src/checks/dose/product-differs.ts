import type { Report } from '../../note/tree/finding.ts';
import { isOver } from '../../dose/arithmetic.ts';
import { productOf } from '../../dose/injections.ts';
import { epinephrineText, strengthText } from '../../dose/words.ts';
import type { Injection } from '../../note/generated/types.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import type { StockProduct, Tables } from '../../practice/tables.ts';
import type { Check, Subject } from '../check.ts';
import { injectionsOf } from './_days.ts';
import { format } from '../sources.ts';

/** Every key that a note writes beside a product of the stock, with what that product is where it differs. */
const facets: readonly ((
  injection: Injection,
  product: StockProduct,
  tables: Tables,
) => Differing | undefined)[] = [
  ({ agent }, product, { agents }) => {
    const written = agent?.value === undefined ? undefined : agents.find(agent.value);
    return agent === undefined || written === undefined || written === product.agent
      ? undefined
      : { at: agent, stock: product.agent.name };
  },
  ({ concentration }, { mgPerMl }) =>
    concentration?.value === undefined || mgPerMl === undefined || isSame(concentration.value.amount, mgPerMl)
      ? undefined
      : { at: concentration, stock: strengthText(mgPerMl) },
  ({ epinephrine }, { epinephrineMicrogramsPerMl: stock }) =>
    epinephrine?.value === undefined || isSame(epinephrine.value.microgramsPerMl, stock)
      ? undefined
      : { at: epinephrine, stock: stock === 0 ? 'no epinephrine' : epinephrineText(stock) },
];

interface Differing {
  readonly at: Leaf<unknown>;
  readonly stock: string;
}

function differing({ dose, tables }: Subject): readonly Report[] {
  const reports: Report[] = [];
  if (tables.stock.size === 0) return reports;
  for (const injection of injectionsOf(dose)) {
    const product = productOf(injection, tables);
    if (product === undefined) continue;
    for (const facet of facets) {
      const found = facet(injection, product, tables);
      if (found === undefined) continue;
      const { at, stock } = found;
      reports.push({ at, args: { product: product.name, written: at.text, stock } });
    }
  }
  return reports;
}

const isSame = (a: number, b: number): boolean => !isOver(a, b) && !isOver(b, a);

export const check: Check = {
  code: 'dose/product-differs',
  severity: 'warning',
  title: 'A note that disagrees with the product in stock',
  why: 'The dose is judged by what the note says. If the vial was the product of the stock, agent, strength or epinephrine were others, and dose and allergies were judged for the wrong drug.',
  sources: [format],
  messages: {
    main: '“{written}” is written here, and “{product}” in the practice file is {stock}. Look at the vial, and write what it says.',
  },
  alternatives: { readAs: [] },
  find: differing,
};
