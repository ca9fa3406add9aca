import { kindText } from '../../dose/words.ts';
import { formatNumber } from '../../note/values/format.ts';
import type { Figures } from '../../limits/ceilings.ts';
import type { Loosened } from '../../practice/limits.ts';
import type { LoosenedFollowUp } from '../../practice/closed-loop.ts';
import { plain } from '../one-line.ts';
import { sentence } from '../from-note.ts';
import type { SummaryContext } from './model.ts';

/** The practice file, and who approved each safety limit that it loosens. */
export function practiceOf({ practice, tables }: SummaryContext): readonly string[] {
  return [
    ...(practice === undefined ? [] : [`Practice file: ${withoutMachine(practice)}.`]),
    ...tables.loosened.map(loosenedRow),
    ...tables.loosenedFollowUp.map(loosenedFollowUpRow),
  ].map(plain);
}

/** A path that means the same on every machine: of an absolute one the name alone. */
const withoutMachine = (path: string): string =>
  /^(?:[\\/]|[a-z]:|~)/i.test(path) ? (path.split(/[\\/]/).at(-1) ?? path) : path;

function loosenedRow({ agent, epinephrine, mgPerKg, capMg, published, source, approval }: Loosened): string {
  const own = figuresText({ mgPerKg, capMg });
  const label = figuresText(published);
  const beside = label === '' ? 'none is published' : `${published.authority}: ${label}`;
  const from = source === '' ? '' : ` Source: ${sentence(source)}`;
  return `Loosened limit of ${kindText(agent, epinephrine)}: ${own} (${beside}); approved by ${approval.by} on ${approval.on}: ${sentence(approval.reason)}${from}`;
}

const loosenedFollowUpRow = ({ what, own, usual, approval }: LoosenedFollowUp): string =>
  `Loosened follow-up, ${what}: ${own} (usual: ${usual}); approved by ${approval.by} on ${approval.on}: ${sentence(approval.reason)}`;

const figuresText = ({ mgPerKg, capMg }: Figures): string =>
  [
    ...(mgPerKg === undefined ? [] : [`${formatNumber(mgPerKg)} mg/kg`]),
    ...(capMg === undefined ? [] : [`at most ${formatNumber(capMg)} mg`]),
  ].join(', ');
