import { isOver } from '../../dose/arithmetic.ts';
import { agentOf } from '../../dose/injections.ts';
import { strengthText } from '../../dose/words.ts';
import { formatNumber } from '../../note/values/format.ts';
import type { Finding, Fix, Report } from '../../note/tree/finding.ts';
import type { Quantity } from '../../note/values/values.ts';
import type { AgentRow } from '../../reference/agents.ts';
import { bounded } from '../bounded.ts';
import type { Check, Subject } from '../check.ts';
import { injectionsOf } from './_days.ts';

const isSame = (a: number, b: number): boolean => !isOver(a, b) && !isOver(b, a);

/** The same number with the other unit, where that strength is made: 10% for 10 mg/mL, 1 mg/mL for 1%. */
function slipOf({ typedAmount, typedUnit }: Quantity, { strengths }: AgentRow): string | undefined {
  const percent = typedUnit.startsWith('%');
  const meant = percent ? typedAmount : typedAmount * 10;
  if (!strengths.some((strength) => isSame(strength, meant))) return undefined;
  return percent ? `${formatNumber(typedAmount)} mg/mL` : `${formatNumber(typedAmount)}%`;
}

function notMade({ dose, tables }: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const injection of injectionsOf(dose)) {
    const strength = injection.concentration;
    const agent = agentOf(injection, tables);
    if (strength?.value === undefined || agent?.form !== 'injected' || injection.amount !== undefined)
      continue;
    const { value, text } = strength;
    if (agent.strengths.length === 0 || agent.strengths.some((made) => isSame(made, value.amount))) continue;
    found.push({ at: strength, ...judged(value, text, agent) });
  }
  return found;
}

/** A strength that is not made: a slip of the unit, a dilution, or something else. */
function judged(value: Quantity, typed: string, agent: AgentRow): Omit<Report, 'at'> {
  const args = { typed, agent: agent.name, made: agent.strengths.map(strengthText).join(', ') };
  const instead = slipOf(value, agent);
  if (instead !== undefined) {
    const severity = bounded('warning', agent.mark);
    return { severity, form: 'unit', args: { ...args, instead }, data: { instead } };
  }
  const diluted = isOver(Math.min(...agent.strengths), value.amount);
  return {
    severity: bounded(diluted ? 'information' : 'warning', agent.mark),
    form: diluted ? 'diluted' : 'main',
    args,
  };
}

export const check: Check = {
  code: 'dose/concentration-not-made',
  severity: 'warning',
  title: 'A strength in which the anesthetic is not made',
  why: 'A wrong strength makes every mg of the record wrong; 10% for 10 mg/mL is ten times the dose.',
  sources: [
    { source: 'us-label-lidocaine-epinephrine', mark: 'Q' },
    { source: 'us-label-mepivacaine', mark: 'Q' },
    { source: 'us-label-bupivacaine-strengths', mark: 'Q' },
    { source: 'us-label-chloroprocaine', mark: 'Q' },
    { source: 'us-label-articaine', mark: 'Q' },
  ],
  messages: {
    main: '{agent} is not made as {typed}; it is made as {made}. Check the vial.',
    unit: '{agent} is not made as {typed}; it is made as {made}. Was it {instead}? Check the vial.',
    diluted: '{typed} is weaker than any {agent} that is made ({made}). If it was diluted, nothing is wrong.',
  },
  alternatives: { readAs: [], forms: ['main', 'unit'] },
  find: notMade,
  fix: (_place, { start, end, data }: Finding): readonly Fix[] => {
    if (data === undefined) return [];
    const { instead } = data as { readonly instead: string };
    return [
      {
        title: `correct the record: ${instead}`,
        kind: 'record',
        sure: false,
        edits: [{ start, end, text: instead }],
      },
    ];
  },
};
