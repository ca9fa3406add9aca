import type { Report } from '../../note/tree/finding.ts';
import type { CautionRow } from '../../reference/cautions.ts';
import { bounded } from '../bounded.ts';
import type { Check, Subject } from '../check.ts';
import { cautionsOf, type Caution } from './_cautions.ts';
import { daysOf } from './_days.ts';
import {
  holds,
  nameOf,
  opened,
  placeOf,
  said,
  saidHere,
  usedOn,
  type Used,
  unclearCaution,
} from './_caution-findings.ts';

/** Those that cause it most, and whose labels say more. */
const strong = ['prilocaine', 'benzocaine'];
/** Under this age the label of prilocaine rules it out together with a medicine that does the same. */
const infantBelowMonths = 12;
/** Under this age labels name every local anesthetic. */
const youngBelowMonths = 6;

const severities = {
  disease: 'error',
  infant: 'error',
  enzyme: 'warning',
  medicine: 'warning',
  everyday: 'information',
  'other-disease': 'warning',
  'other-enzyme': 'information',
  'other-medicine': 'information',
} as const;

type Form = keyof typeof severities;

function formOf(
  by: NonNullable<CautionRow['methemoglobin']>['by'],
  isStrong: boolean,
  isInfant: boolean,
): Form | undefined {
  if (!isStrong) return by === 'everyday' ? undefined : `other-${by}`;
  return isInfant && by === 'medicine' ? 'infant' : by;
}

function reportOf(used: Used, caution: Caution, months: number): Report | undefined {
  const effect = caution.row.methemoglobin;
  if (effect === undefined) return undefined;
  const isStrong = strong.some((name) => holds(used, name));
  const form = formOf(effect.by, isStrong, months < infantBelowMonths && holds(used, 'prilocaine'));
  if (form === undefined) return undefined;
  const severity = opened(bounded(severities[form], effect.mark), caution);
  const args = { agent: used.agent.name, name: nameOf(caution) };
  return { at: placeOf(used.injection), form, severity, args, related: [said(caution)] };
}

function find(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const day of daysOf(subject.dose)) {
    const months = day.facts.months ?? Infinity;
    const cautions = cautionsOf(subject);
    if (cautions.length === 0 && months >= youngBelowMonths) continue;
    const anesthetics = usedOn(day).filter(({ agent }) => agent.class !== 'none');
    const used = anesthetics.find((one) => strong.some((name) => holds(one, name))) ?? anesthetics[0];
    if (used === undefined) continue;
    for (const caution of cautions) {
      const report = reportOf(used, caution, months);
      if (report !== undefined) found.push(report);
    }
    if (months < youngBelowMonths)
      found.push({
        at: placeOf(used.injection),
        form: 'young',
        severity: 'information',
        args: { agent: used.agent.name },
      });
  }
  return found;
}

export const check: Check = {
  code: 'dose/methemoglobin',
  severity: 'error',
  title: 'A local anesthetic in a patient prone to methemoglobinemia',
  why: 'Since 2018 the labels of all local anesthetics warn of methemoglobinemia: with G6PD deficiency, congenital or idiopathic methemoglobinemia, heart or lung compromise, under 6 months, and with medicines that do the same. Prilocaine and benzocaine cause it most; the label of prilocaine rules it out with the disease, and that of the cream under 12 months together with such a medicine. Acetaminophen and metoclopramide are reported with these two only; heart and lung disease are left to the clinician.',
  sources: [
    { source: 'us-label-methemoglobin', mark: 'Q' },
    { source: 'us-label-methemoglobin-drugs', mark: 'Q' },
    { source: 'us-label-dapsone-gel', mark: 'Q' },
    { source: 'us-label-cream-methemoglobin-drugs', mark: 'Q' },
    { source: 'us-label-prilocaine-methemoglobin', mark: 'Q' },
    { source: 'fda-benzocaine-2018', mark: 'Q' },
    { source: 'prilocaine-benzocaine-course', mark: 'Q' },
    { source: 'methemoglobin-drugs-australia', mark: 'Q' },
    { source: 'methemoglobin-drugs-ers', mark: 'Q' },
    { source: 'methemoglobin-drugs-restated', mark: 'Q2' },
  ],
  messages: {
    disease:
      '{agent} with {name}: its label rules it out. Use another anesthetic; if it was given, watch for cyanosis for hours.',
    infant:
      '{agent} under 12 months together with {name}: its label rules it out. Use another anesthetic; if it was given, watch for cyanosis.',
    enzyme:
      '{agent} with {name}: the risk of methemoglobinemia is higher. Use another anesthetic, as little as possible, and watch for cyanosis: labels of all local anesthetics name it.',
    medicine:
      '{agent} and {name} can both cause methemoglobinemia. Use another anesthetic, or as little as possible, and watch for cyanosis.',
    everyday: '{agent} and {name} can both cause methemoglobinemia. Use the smallest amount.',
    'other-disease':
      '{agent} with {name}: labels of all local anesthetics name the risk and ask for close watching. Use as little as possible, and watch for cyanosis for hours.',
    'other-enzyme':
      '{agent} with {name}: labels of all local anesthetics name it as a risk of methemoglobinemia. Use as little as possible, and watch for cyanosis.',
    'other-medicine':
      '{agent} with {name}: labels of local anesthetics list it as a risk of methemoglobinemia. Watch for cyanosis.',
    young:
      '{agent} under 6 months: labels of local anesthetics name this age as a risk of methemoglobinemia. Use as little as possible, and watch for cyanosis.',
    ...saidHere,
  },
  alternatives: { forms: ['disease', 'infant', 'enzyme', 'medicine'], readAs: [] },
  unclear: unclearCaution,
  find,
};
