import type { Related, Report } from '../../note/tree/finding.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import type { DressingRow } from '../../reference/dressings.ts';
import type { Check, Subject } from '../check.ts';
import { cautionsOf, type Caution } from '../dose/_cautions.ts';
import { said, saidHere } from '../dose/_caution-findings.ts';
import { rowsIn } from '../words.ts';

/** Weeks from which on a pregnancy counts as near its end: the third trimester, Wheal's own number; the label names none. */
const lateWeeks = 28;

const early = /\b(?:first|second|1st|2nd|early)\b/i;
const weeksOf = /\b(\d{1,2})(?:\s?\+\s?\d)?\s{0,2}(?:w(?:ee)?ks?|wk|w)\b/i;

/** Whether the words about the pregnancy say that its end is far. */
function isEarly({ at }: Caution, text: string): boolean {
  const start = text.lastIndexOf('\n', at.start) + 1;
  const end = text.indexOf('\n', at.end);
  const words = text.slice(start, end < 0 ? text.length : end);
  const weeks = weeksOf.exec(words)?.[1];
  return weeks === undefined ? early.test(words) : Number(weeks) < lateWeeks;
}

function forms(subject: Subject, nearEye: boolean): readonly Pick<Report, 'form' | 'severity' | 'related'>[] {
  const found: { form: string; severity?: 'information'; related?: readonly Related[] }[] = [];
  const { months } = subject.dose.facts;
  if (months !== undefined && months < 2) found.push({ form: 'young' });
  const pregnancy = cautionsOf(subject).find(({ row }) => row.pregnancy !== undefined);
  if (pregnancy !== undefined)
    found.push({
      form: 'pregnancy',
      related: [said(pregnancy)],
      ...(isEarly(pregnancy, subject.source.text) ? { severity: 'information' as const } : {}),
    });
  if (nearEye) found.push({ form: 'eye' });
  return found;
}

const sulfadiazineIn = (leaf: Leaf<string>, { tables }: Subject): DressingRow | undefined =>
  rowsIn(tables.dressings, leaf).find(({ name }) => name === 'silver sulfadiazine');

function find(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const procedure of subject.note.procedures ?? [])
    for (const at of procedure.dressing ?? []) {
      const rests = sulfadiazineIn(at, subject);
      if (rests === undefined) continue;
      const base = subject.siteOf(procedure)?.base;
      const args = { site: base?.name ?? '' };
      for (const one of forms(subject, base?.nearEye === true)) found.push({ at, args, rests, ...one });
    }
  return found;
}

export const check: Check = {
  code: 'dressing/silver-sulfadiazine',
  severity: 'warning',
  title: 'Silver sulfadiazine on a newborn, late in pregnancy, or near the eye',
  why: 'Sulfonamides raise the risk of kernicterus: the label rules the cream out near term, in premature infants and in the first 2 months of life, and keeps it away from the eye. Near term is taken from 28 weeks on, which is Wheal’s own number; earlier, it is information.',
  sources: [{ source: 'us-label-silver-sulfadiazine', mark: 'Q' }],
  messages: {
    young:
      'Silver sulfadiazine under 2 months: its label rules it out (kernicterus). Use petrolatum; if it is on, take it off.',
    pregnancy:
      'Silver sulfadiazine, and the patient is or may be pregnant: its label rules it out near term. Use petrolatum, or write how far the pregnancy is.',
    eye: 'Silver sulfadiazine near the eye ({site}): its label keeps it away. Use petrolatum, or an ointment made for the eye.',
    ...saidHere,
  },
  alternatives: { readAs: [] },
  find,
};
