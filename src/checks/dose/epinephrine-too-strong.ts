import type { Report } from '../../note/tree/finding.ts';
import { isOver } from '../../dose/arithmetic.ts';
import { epinephrineOf, productOf } from '../../dose/injections.ts';
import { epinephrineText } from '../../dose/words.ts';
import type { Check, Subject } from '../check.ts';
import { injectionsOf } from './_days.ts';
import { format } from '../sources.ts';

function tooStrong({ dose, tables }: Subject): readonly Report[] {
  const found: Report[] = [];
  const { microgramsPerMl } = tables.epinephrine.strongest;
  for (const injection of injectionsOf(dose)) {
    const { drawn } = epinephrineOf(injection, productOf(injection, tables));
    if (!isOver(drawn, microgramsPerMl)) continue;
    const at = injection.epinephrine ?? injection.product ?? injection.head;
    found.push({ at, args: { drawn: epinephrineText(drawn), strongest: epinephrineText(microgramsPerMl) } });
  }
  return found;
}

export const check: Check = {
  code: 'dose/epinephrine-too-strong',
  severity: 'error',
  title: 'Epinephrine stronger than any local anesthetic contains',
  why: 'A slip of one digit is ten times the epinephrine. Local anesthetics are made with 1:50,000 at the strongest.',
  sources: [{ source: 'epinephrine-strengths', mark: 'Q' }, format],
  messages: {
    main: 'Epinephrine {drawn} is stronger than {strongest}, the strongest that is made with a local anesthetic. Check the ratio on the vial.',
  },
  alternatives: { readAs: ['zero-more'] },
  find: tooStrong,
};
