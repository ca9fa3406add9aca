import type { Check } from '../check.ts';
import type { Report, Subject } from '../check.ts';
import { cautionsOf } from './_cautions.ts';
import { daysOf } from './_days.ts';
import { said, saidHere, type Used, usedOn, placeOf } from './_caution-findings.ts';

const holds = ({ agent }: Used, name: string): boolean =>
  agent.name === name || agent.contains.includes(name);

const oxidizing = 'prilocaine';

const infantBelowMonths = 12;

function methemoglobin(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const day of daysOf(subject.dose)) {
    const first = usedOn(day).find((one) => holds(one, oxidizing));
    if (first === undefined) continue;
    const infant = (day.facts.months ?? Infinity) < infantBelowMonths;
    for (const caution of cautionsOf(subject)) {
      const effect = caution.row.methemoglobin;
      if (effect === undefined) continue;
      const form = effect.by === 'medicine' && infant ? 'infant' : effect.by;
      const severity = severities[form];
      const args = { agent: first.agent.name, name: caution.row.name };
      found.push({ at: placeOf(first.injection), form, severity, args, related: [said(caution)] });
    }
  }
  return found;
}

const severities = { disease: 'error', infant: 'error', enzyme: 'warning', medicine: 'information' } as const;

export const check: Check = {
  code: 'dose/methemoglobin',
  severity: 'error',
  title: 'Prilocaine in a patient who is prone to methemoglobin',
  why: 'A metabolite of prilocaine turns hemoglobin into methemoglobin. The label rules them out with congenital or idiopathic methemoglobinemia, and under 12 months together with drugs that do the same; with G6PD deficiency the risk is higher.',
  sources: [
    { source: 'us-label-prilocaine-methemoglobin', mark: 'Q' },
    { source: 'prilocaine-benzocaine-course', mark: 'Q' },
    { source: 'methemoglobin-drugs-australia', mark: 'Q' },
    { source: 'methemoglobin-drugs-ers', mark: 'Q' },
  ],
  messages: {
    disease:
      '{agent} with {name}: its label rules it out. Use another anesthetic; if it was given, watch for cyanosis.',
    infant:
      '{agent} under 12 months together with {name}: its label rules it out. Use another anesthetic; if it was given, watch for cyanosis.',
    enzyme:
      '{agent} with {name}: the risk of methemoglobinemia is higher. Use another anesthetic, such as lidocaine alone.',
    medicine:
      '{agent} and {name} can both cause methemoglobin. Keep to the smallest amount, or use lidocaine alone.',
    said: saidHere,
  },
  alternatives: { readAs: [] },
  find: methemoglobin,
};
