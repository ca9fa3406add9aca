import type { Report } from '../../note/tree/finding.ts';
import type { Check, Subject } from '../check.ts';
import { daysOf } from './_days.ts';
import { placeOf } from './_caution-findings.ts';

function mixed({ dose }: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const { given } of daysOf(dose)) {
    const [first] = given;
    const other = given.find(({ agent }) => agent !== first?.agent);
    if (first === undefined || other === undefined) continue;
    const { start, end } = placeOf(first.injection);
    const args = { first: first.agent.name, second: other.agent.name };
    found.push({ at: placeOf(other.injection), args, related: [{ start, end, form: 'first', args }] });
  }
  return found;
}

export const check: Check = {
  code: 'dose/agents-mixed',
  severity: 'information',
  title: 'Two local anesthetics in one visit',
  why: 'Labels advise against mixing anesthetics or giving one after the other, for lack of data. Teaching adds up the share of each limit, as Wheal does; one hospital sheet gives no more of either once one limit is reached.',
  sources: [
    { source: 'us-label-lidocaine-epinephrine', mark: 'Q' },
    { source: 'additive-toxicity', mark: 'Q' },
  ],
  messages: {
    main: '{first} and {second} in one visit: their labels advise against it for lack of data. Wheal adds up their shares of the limits; use only one where that is enough.',
    first: '{first} here',
  },
  sourcesDiffer: {
    how: 'Labels do not recommend mixing, teaching adds the shares of the limits, a hospital stops at the first maximum. The shares are added.',
    settings: ['severities'],
  },
  find: mixed,
};
