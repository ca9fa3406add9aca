import type { Report } from '../../note/tree/finding.ts';
import type { Injection } from '../../note/generated/types.ts';
import type { AgentRow } from '../../reference/agents.ts';
import type { SiteRow } from '../../reference/sites.ts';
import { bounded } from '../bounded.ts';
import type { Check, Subject } from '../check.ts';
import { daysOf } from './_days.ts';
import { placeOf, usedOn } from './_caution-findings.ts';

type Place = NonNullable<AgentRow['notOn']>['places'][number];

const isAt: Readonly<Record<Place, (site: SiteRow) => boolean>> = {
  eye: ({ nearEye }) => nearEye,
  'ear canal': ({ earCanal }) => earCanal,
  mucosa: ({ mucosa }) => mucosa,
};

const words: Readonly<Record<Place, string>> = {
  eye: 'near the eye',
  'ear canal': 'in the ear canal',
  mucosa: 'on mucous membrane',
};

/** Whether an injection belongs to a procedure: its own, or that of the only one. */
const belongs = ({ note }: Subject, index: number, injection: Injection): boolean =>
  note.procedures?.[index]?.anesthetic?.includes(injection) === true ||
  (note.procedures?.length === 1 && note.anesthetic?.includes(injection) === true);

function misplaced(subject: Subject, agent: AgentRow, injection: Injection): readonly Report[] {
  const fact = agent.notOn;
  if (fact === undefined) return [];
  return (subject.note.procedures ?? []).flatMap((procedure, index): readonly Report[] => {
    const site = belongs(subject, index, injection) ? subject.siteOf(procedure)?.base : undefined;
    const place = site && fact.places.find((one) => isAt[one](site));
    if (site === undefined || place === undefined) return [];
    const args = { cream: agent.name, site: site.name, place: words[place] };
    return [{ at: placeOf(injection), severity: bounded('warning', fact.mark), args }];
  });
}

const ageText = (months: number): string =>
  months < 24 ? `${months} month${months === 1 ? '' : 's'}` : `${months / 12} years`;

function find(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const day of daysOf(subject.dose))
    for (const { agent, injection } of usedOn(day)) {
      if (agent.form !== 'cream') continue;
      found.push(...misplaced(subject, agent, injection));
      const young = agent.notBelow;
      if (young !== undefined && (day.facts.months ?? Infinity) < young.months)
        found.push({
          at: placeOf(injection),
          form: 'young',
          severity: bounded('warning', young.mark),
          args: { cream: agent.name, age: ageText(young.months) },
        });
    }
  return found;
}

export const check: Check = {
  code: 'dose/cream-place',
  severity: 'warning',
  title: 'An anesthetic cream where its label advises against it, or on too young a patient',
  why: 'Creams hurt the eye, harm hearing where they reach the middle ear, and pass through mucous membrane and the skin of the newborn faster. The agency wants no benzocaine in the mouth under 2 years; Wheal reports it at every site.',
  sources: [
    { source: 'us-label-cream-places', mark: 'Q' },
    { source: 'uk-smpc-tetracaine-gel', mark: 'Q' },
    { source: 'uk-reference-lidocaine-cream', mark: 'Q' },
    { source: 'fda-benzocaine-2018', mark: 'Q' },
  ],
  messages: {
    main: '{cream} {place} ({site}): its label advises against it. Use an injection; if it is on, take it off and rinse.',
    young:
      '{cream} under {age}: its source advises against it. Use another anesthetic; if it was given, watch the child.',
  },
  find,
};
