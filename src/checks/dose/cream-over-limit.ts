import type { Report } from '../../note/tree/finding.ts';
import { floorTo } from '../../dose/arithmetic.ts';
import type { CreamDose } from '../../dose/judge.ts';
import { formatNumber } from '../../note/values/format.ts';
import { bounded } from '../bounded.ts';
import type { Check, Subject } from '../check.ts';
import { daysOf } from './_days.ts';

const units = { grams: 'g', area: 'cm²', time: 'minutes' } as const;

function overOwnRow({ applied, agent, row, over }: CreamDose): readonly Report[] {
  const found: Report[] = [];
  const last = applied.at(-1);
  if (row === undefined || last === undefined) return found;
  for (const { what, amount, limit, mark } of over) {
    const longest = applied.find(({ minutes }) => minutes === amount) ?? last;
    const at =
      what === 'time'
        ? (longest.injection.off ?? longest.at)
        : (last.injection[what === 'grams' ? 'amount' : 'area'] ?? last.at);
    found.push({
      at,
      severity: bounded(row.kind === 'maximum' ? 'warning' : 'information', mark),
      form: row.kind === 'maximum' ? 'main' : 'studied',
      args: {
        cream: agent.name,
        amount: `${formatNumber(amount)} ${units[what]}`,
        limit: `${formatNumber(floorTo(limit, 0.01))} ${units[what]}`,
        population: row.population.text,
      },
    });
  }
  return found;
}

export const check: Check = {
  code: 'dose/cream-over-limit',
  severity: 'warning',
  title: 'More anesthetic cream, on more skin or for longer than the label allows for this patient',
  why: 'The smaller the child, the more of a cream reaches the blood; prilocaine in it can turn hemoglobin into methemoglobin.',
  sources: [
    { source: 'us-label-lidocaine-prilocaine', mark: 'Q2' },
    { source: 'us-label-lidocaine-prilocaine-studies', mark: 'Q' },
    { source: 'uk-reference-lidocaine-cream', mark: 'Q' },
    { source: 'us-lidocaine-cream-area', mark: 'Q2' },
    { source: 'uk-smpc-tetracaine-gel', mark: 'Q' },
    { source: 'us-label-lidocaine-ointment', mark: 'Q' },
  ],
  messages: {
    main: '{amount} of {cream} is more than {limit}, the most for this patient ({population}). Check amount, area, time and weight.',
    studied: '{amount} of {cream} is more than {limit}, the most that the label mentions for {population}.',
  },
  alternatives: { readAs: [], forms: ['main'] },
  find: ({ dose }: Subject) => daysOf(dose).flatMap(({ creams }) => creams.flatMap(overOwnRow)),
};
