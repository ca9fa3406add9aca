import { overLimit } from '../../dose/judge.ts';
import type { Check } from '../check.ts';

export const checks: readonly Check[] = [
  {
    code: 'dose/over-limit',
    severity: 'error',
    title: 'More local anesthetic than the limit for this patient',
    why: 'Past the limit the risk of seizures and of cardiac arrest rises. All sites of a visit count together.',
    sources: [{ source: 'us-label-lidocaine', mark: 'Q' }],
    messages: {
      main: 'The dose of the visit is {percent}% of the limit: {sum}. Check volume, strength and weight.',
      also: 'also counts: {mg} mg',
    },
    *find({ dose }) {
      if (!overLimit(dose)) return;
      const given = dose.agents.flatMap((agent) => agent.given);
      const last = given.at(-1);
      if (last === undefined) return;
      const sum = dose.agents.map((one) => `${one.agent} ${one.mg} mg of ${one.limitMg} mg`).join(', ');
      yield {
        at: last.at,
        args: { percent: Math.ceil((dose.fraction ?? 0) * 100), sum },
        related: given
          .slice(0, -1)
          .map(({ at, mg }) => ({ start: at.start, end: at.end, form: 'also', args: { mg } })),
      };
    },
  },
];
