import type { Finding, Fix } from '../../note/finding.ts';
import { nearest, type Nearest } from '../../note/nearest.ts';
import { productOf } from '../../dose/injections.ts';
import type { Check, Report, Subject } from '../check.ts';
import { injectionsOf } from './_days.ts';

const format = { source: 'format', mark: 'format' } as const;

const meant = (near: Nearest | undefined): Partial<Report> =>
  near === undefined ? {} : { form: 'near', data: near };

function* unknownAgents({ dose, tables }: Subject): Iterable<Report> {
  for (const { agent } of injectionsOf(dose)) {
    if (agent?.value === undefined || tables.agents.find(agent.value) !== undefined) continue;
    const near = nearest(agent.value, tables.agents.words);
    yield { at: agent, args: { agent: agent.value, ...(near && { near: near.word }) }, ...meant(near) };
  }
}

function* unknownProducts({ dose, tables }: Subject): Iterable<Report> {
  for (const injection of injectionsOf(dose)) {
    const { product } = injection;
    if (product?.value === undefined || productOf(injection, tables) !== undefined) continue;
    // An agent that is written out makes the name of the product a remark.
    if (injection.agent !== undefined && injection.concentration !== undefined) continue;
    const near = nearest(
      product.value,
      [...tables.stock.values()].map(({ name }) => name),
    );
    yield {
      at: product,
      args: { product: product.value, ...(near && { near: near.word }) },
      ...(tables.stock.size === 0 ? { form: 'no-stock' } : meant(near)),
    };
  }
}

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
];
