import { isOver } from '../../dose/arithmetic.ts';
import type { AgentDose, DoseJudgement } from '../../dose/judge.ts';
import { publishedCeiling } from '../../dose/rules.ts';
import { allowedMgText, authorityText, kindText, mgText } from '../../dose/words.ts';
import type { Report } from '../../note/tree/finding.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Check } from '../check.ts';
import { crossing, daysOf } from './_days.ts';

/** What is said of a dose that is judged by a limit that the practice has loosened. */
function reportOf(one: AgentDose, { facts }: DoseJudgement, tables: Tables): Report | undefined {
  const { limit, limitMg, mg, given } = one;
  const approval = tables.loosened.find(
    ({ agent, epinephrine }) => agent === limit.agent && epinephrine === limit.epinephrine,
  )?.approval;
  if (limit.practice !== 'approved' || approval === undefined || limitMg === Infinity) return undefined;
  const label = publishedCeiling(one.agent, one.epinephrine, facts, tables);
  const at = crossing(given, (injection) => injection.mg, label?.limitMg ?? 0);
  if (at === undefined) return undefined;
  const args = {
    product: kindText(one.agent, one.epinephrine),
    mg: mgText(mg),
    max: allowedMgText(limitMg),
    by: approval.by,
    on: approval.on,
    reason: approval.reason.replace(/(?<![.])[.]+$/, ''),
  };
  if (label === undefined || label.limitMg === Infinity) return { at: at.at, form: 'none', args };
  const { limit: row, boundBy } = label;
  return {
    at: at.at,
    form: isOver(mg, label.limitMg) ? 'passed' : 'main',
    args: {
      ...args,
      label: allowedMgText(label.limitMg),
      authority: authorityText(row, boundBy, tables.authority),
    },
  };
}

export const check: Check = {
  code: 'dose/loosened-limit',
  severity: 'information',
  title: 'A dose judged by a limit that the practice loosened',
  why: 'Anyone who reads that a dose is within the limit must see whose limit that is, and what the label allows.',
  sources: [{ source: 'practice-file', mark: 'format' }],
  messages: {
    main: 'The {mg} mg of {product} are within the {label} mg of {authority}; the practice has loosened that limit to {max} mg ({by}, {on}: {reason}).',
    passed:
      'The {mg} mg of {product} are more than the {label} mg of {authority}. They are judged by the practice’s own {max} mg ({by}, {on}: {reason}).',
    none: 'No limit of {product} is published for such a patient. The {mg} mg are judged by the practice’s own {max} mg ({by}, {on}: {reason}).',
  },
  find({ dose, tables }) {
    const found: Report[] = [];
    if (tables.loosened.length === 0) return found;
    for (const day of daysOf(dose))
      for (const one of day.agents) {
        const report = reportOf(one, day, tables);
        if (report !== undefined) found.push(report);
      }
    return found;
  },
};
