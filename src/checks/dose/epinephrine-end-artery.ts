import type { Report } from '../../note/tree/finding.ts';
import type { Given } from '../../dose/judge.ts';
import type { Injection, Procedure } from '../../note/generated/types.ts';
import type { Check, Subject } from '../check.ts';
import { cautionsOf } from './_cautions.ts';
import {
  nameOf,
  said,
  saidHere,
  epinephrineAt,
  withEpinephrine,
  unclearCaution,
} from './_caution-findings.ts';

/** What was injected for a procedure, its own and what the note gives for the whole visit. */
function givenFor(procedure: Procedure, { note, dose }: Subject): readonly Given[] {
  const own: ReadonlySet<Injection> = new Set([...(procedure.anesthetic ?? []), ...(note.anesthetic ?? [])]);
  return withEpinephrine(dose).filter(({ injection }) => own.has(injection));
}

function endArteries(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  if (subject.dose.epinephrineMicrograms === 0) return found;
  const told = new Set<Given>();
  for (const procedure of subject.note.procedures ?? []) {
    const base = subject.siteOf(procedure)?.base;
    if (base?.endArtery !== true) continue;
    const caution = cautionsOf(subject).find(({ row }) => row.endArtery?.regions.has(base.region) === true);
    const first = givenFor(procedure, subject)[0];
    if (caution === undefined || first === undefined || told.has(first)) continue;
    told.add(first);
    const args = { name: nameOf(caution), site: base.name };
    found.push({ at: epinephrineAt(first), args, related: [said(caution)], rests: caution.row.endArtery });
  }
  return found;
}

export const check: Check = {
  code: 'dose/epinephrine-end-artery',
  severity: 'warning',
  title: 'Epinephrine in a digit, ear, nose or penis with Raynaud or vascular disease',
  why: 'In healthy digits, ears and noses reviews and trials found epinephrine safe, and it is not reported. With Raynaud phenomenon an ischemic digit is reported, and labels ask for care with peripheral vascular disease.',
  sources: [
    { source: 'digit-raynaud-2022', mark: 'Q' },
    { source: 'us-label-end-arteries', mark: 'Q' },
    { source: 'digit-epinephrine-review', mark: 'Q' },
  ],
  messages: {
    main: 'Epinephrine in the {site} with {name}: the blood supply may not tolerate it. Use a plain solution; if it was given, watch color and warmth until it has worn off.',
    ...saidHere,
  },
  alternatives: { readAs: [] },
  sourcesDiffer: {
    how: 'Reviews and trials consider epinephrine safe in fingers, toes, nose and ears; a monograph and one review do not. The reviews are followed: only Raynaud and vascular disease are reported.',
    settings: ['severities'],
  },
  unclear: unclearCaution,
  find: endArteries,
};
