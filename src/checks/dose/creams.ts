import type { CreamDose } from '../../dose/judge.ts';
import { isAdult } from '../../dose/patient.ts';
import { formatNumber } from '../../note/values/format.ts';
import { bounded } from '../bounded.ts';
import type { Check, Report, Subject } from '../check.ts';
import { daysOf } from './_days.ts';

const units = { grams: 'g', area: 'cm²', time: 'minutes' } as const;

function overOwnRow({ applied, agent, row, over }: CreamDose): readonly Report[] {
  const found: Report[] = [];
  const last = applied.at(-1);
  if (row === undefined || last === undefined) return found;
  for (const { what, amount, limit } of over) {
    const longest = applied.find(({ minutes }) => minutes === amount) ?? last;
    const at =
      what === 'time'
        ? (longest.injection.off ?? longest.at)
        : (last.injection[what === 'grams' ? 'amount' : 'area'] ?? last.at);
    found.push({
      at,
      severity: bounded(row.kind === 'maximum' ? 'warning' : 'information', row.mark),
      form: row.kind === 'maximum' ? 'main' : 'studied',
      args: {
        cream: agent.name,
        amount: `${formatNumber(amount)} ${units[what]}`,
        limit: `${formatNumber(limit)} ${units[what]}`,
        population: row.population.text,
      },
    });
  }
  return found;
}

/** Why nothing of a cream was held against a maximum; adults have none for the usual creams, and need none. */
function unjudgedBecause({ agent, row, cm2 }: CreamDose, adult: boolean): 'main' | 'area' | undefined {
  if (row === undefined) return adult && agent.form === 'cream' ? undefined : 'main';
  return row.maxGrams === undefined && cm2 === undefined ? 'area' : undefined;
}

export const checks: readonly Check[] = [
  {
    code: 'dose/cream-over-limit',
    about: ['amount'],
    severity: 'warning',
    title: 'More anesthetic cream, on more skin or for longer than the label has for this patient',
    why: 'The smaller the child, the more of a cream reaches the blood; prilocaine in it can turn hemoglobin into methemoglobin.',
    sources: [
      { source: 'us-label-lidocaine-prilocaine', mark: 'Q2' },
      { source: 'us-label-lidocaine-prilocaine-studies', mark: 'Q' },
      { source: 'lidocaine-cream-from-memory', mark: 'M' },
    ],
    messages: {
      main: '{amount} of {cream} is more than {limit}, the most for this patient ({population}). Check amount, area, time and weight.',
      studied: '{amount} of {cream} is more than {limit}, the most that the label tells of for {population}.',
    },
    find: ({ dose }: Subject) => daysOf(dose).flatMap(({ creams }) => creams.flatMap(overOwnRow)),
  },
  {
    code: 'dose/cream-not-judged',
    about: ['amount'],
    severity: 'information',
    title: 'An anesthetic cream that cannot be judged',
    why: 'A cream that was not judged must not look like one that is in order.',
    sources: [{ source: 'format', mark: 'format' }],
    messages: {
      main: 'No maximum of {cream} is known here for this patient, so {amount} g is not judged. Look it up in the label.',
      area: 'The maximum of {cream} that is known here is an area, and none is written, so {amount} g is not judged. Write `area`, such as 20 cm2.',
    },
    find({ dose }: Subject) {
      const found: Report[] = [];
      for (const day of daysOf(dose))
        for (const cream of day.creams) {
          const form = unjudgedBecause(cream, isAdult(day.facts));
          const [first] = cream.applied;
          if (form !== undefined && first !== undefined)
            found.push({
              at: first.at,
              form,
              args: { cream: cream.agent.name, amount: formatNumber(cream.grams) },
            });
        }
      return found;
    },
  },
];
