import type { Finding, Fix } from '../../note/tree/finding.ts';
import { nearest, type Nearest } from '../../note/text/nearest.ts';
import { isOver } from '../../dose/arithmetic.ts';
import { agentOf, productOf } from '../../dose/injections.ts';
import { epinephrineText, strengthText } from '../../dose/words.ts';
import type { Injection } from '../../note/generated/types.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import type { StockProduct, Tables } from '../../practice/tables.ts';
import type { Check, Report, Subject } from '../check.ts';
import { injectionsOf } from './_days.ts';

const format = { source: 'format', mark: 'format' } as const;

const meant = (near: Nearest | undefined): Partial<Report> =>
  near === undefined ? {} : { form: 'near', data: near };

function unknownAgents({ dose, tables }: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const injection of injectionsOf(dose)) {
    const { agent } = injection;
    if (agent?.value === undefined || agentOf(injection, tables) !== undefined) continue;
    const near = nearest(agent.value, tables.agents.words);
    found.push({ at: agent, args: { agent: agent.value, ...(near && { near: near.word }) }, ...meant(near) });
  }
  return found;
}

function unknownProducts({ dose, tables }: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const injection of injectionsOf(dose)) {
    const { product } = injection;
    if (product?.value === undefined || productOf(injection, tables) !== undefined) continue;
    // An agent that is written out makes the name of the product a remark.
    if (injection.agent !== undefined && injection.concentration !== undefined) continue;
    const near = nearest(
      product.value,
      [...tables.stock.values()].map(({ name }) => name),
    );
    found.push({
      at: product,
      args: { product: product.value, ...(near && { near: near.word }) },
      ...(tables.stock.size === 0 ? { form: 'no-stock' } : meant(near)),
    });
  }
  return found;
}

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

const fix = (_place: unknown, { start, end, data }: Finding): readonly Fix[] => {
  if (data === undefined) return [];
  const { word, sure } = data as Nearest;
  return [{ title: `Write ${word}`, kind: 'spelling', sure, edits: [{ start, end, text: word }] }];
};

export const checks: readonly Check[] = [
  {
    code: 'dose/unknown-agent',
    severity: 'error',
    title: 'An anesthetic that is not known',
    why: 'Without knowing the drug neither the dose nor an allergy can be checked.',
    sources: [format],
    messages: {
      main: '“{agent}” is not an anesthetic that is known here, so neither dose nor allergy can be checked. Write its generic name, such as lidocaine.',
      near: '“{agent}” is not an anesthetic that is known here, so neither dose nor allergy can be checked. Did you mean {near}?',
    },
    find: unknownAgents,
    fix,
  },
  {
    code: 'dose/unknown-product',
    about: ['product'],
    severity: 'error',
    title: 'A product that the practice does not list',
    why: 'A product stands for agent, strength and epinephrine; one that is not in stock stands for nothing, and its dose can’t be judged.',
    sources: [format],
    messages: {
      main: '“{product}” is not in the stock of the practice file, so its dose can’t be judged. Write agent and concentration, or add the product to the practice file.',
      near: '“{product}” is not in the stock of the practice file, so its dose can’t be judged. Did you mean {near}?',
      'no-stock':
        'No practice file lists products, so “{product}” stands for nothing and its dose can’t be judged. Write agent and concentration.',
    },
    find: unknownProducts,
    fix,
  },
  {
    code: 'dose/product-differs',
    about: ['product', 'agent'],
    severity: 'warning',
    title: 'A note that says something else than the product holds',
    why: 'The dose goes by what the note writes out. If the vial was the product of the stock, agent, strength or epinephrine were others, and dose and allergies were judged for the wrong drug.',
    sources: [format],
    messages: {
      main: '“{written}” is written here, and “{product}” in the practice file is {stock}. Look at the vial, and take out what is not so.',
    },
    find: differing,
  },
];
