import type { Report } from '../../note/tree/finding.ts';
import { nearest } from '../../note/text/nearest.ts';
import { productOf } from '../../dose/injections.ts';
import type { Check, Subject } from '../check.ts';
import { injectionsOf } from './_days.ts';
import { meant, fix } from './_agents.ts';
import { format } from '../sources.ts';

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

export const check: Check = {
  code: 'dose/unknown-product',
  severity: 'error',
  title: 'A product that the practice does not list',
  why: 'A product gives agent, strength and epinephrine; one that is not in stock gives none of them, and its dose can’t be judged.',
  sources: [format],
  messages: {
    main: '“{product}” is not in the stock of the practice file, so its dose can’t be judged. Write agent and concentration, or add the product to the practice file.',
    near: '“{product}” is not in the stock of the practice file, so its dose can’t be judged. Did you mean {near}?',
    'no-stock':
      'No practice file lists products, so “{product}” says nothing about the drug and its dose can’t be judged. Write agent and concentration.',
  },
  find: unknownProducts,
  fix,
};
