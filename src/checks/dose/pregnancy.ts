import type { Report } from '../../note/tree/finding.ts';
import type { AgentRow } from '../../reference/agents.ts';
import type { Check, Subject } from '../check.ts';
import { cautionsOf, type Caution } from './_cautions.ts';
import { daysOf } from './_days.ts';
import { said, saidHere, usedOn, placeOf, unclearCaution } from './_caution-findings.ts';

/** What is not put off in pregnancy: a suspected cancer, a rash, an infection. */
const urgent =
  /\b(?:melanoma|MM|MIS|lentigo maligna|carcinoma|BCC|SCC\w*|cancer|malignan\w*|lymphoma|sarcoma|atypi\w*|dysplastic|pigmented|rash|dermatitis|dermatosis|eruption|pemphig\w*|bullous|blister\w*|vasculitis|lupus|psoriasis|eczema|infect\w*|abscess|pruri\w*|urticari\w*|PUPPP?|bleeding|growing|changing)\b/i;

/** Whether all that is asked about can wait until after the birth. */
const canWait = ({ note }: Subject): boolean => {
  const asked = (note.procedures ?? []).flatMap(({ question }) => question?.value ?? []);
  return asked.length > 0 && asked.every((text) => !urgent.test(text));
};

function inPregnancy(subject: Subject): readonly Report[] {
  const caution = cautionsOf(subject).find(({ row }) => row.pregnancy !== undefined);
  if (caution === undefined) return [];
  const others = ofOthers(subject, caution);
  const [first] = subject.dose.given;
  if (others.length > 0 || first === undefined || !canWait(subject)) return others;
  return [{ at: placeOf(first.injection), form: 'elective', args: {}, related: [said(caution)] }];
}

function ofOthers(subject: Subject, caution: Caution): readonly Report[] {
  const found: Report[] = [];
  for (const day of daysOf(subject.dose))
    for (const one of usedOn(day)) {
      const { agent, injection } = one;
      if (agent.class === 'none' || !isOther(agent)) continue;
      found.push({
        at: placeOf(injection),
        args: { agent: agent.name },
        related: [said(caution)],
        rests: caution.row.pregnancy,
      });
    }
  return found;
}

/** Whether it holds another anesthetic than lidocaine. */
const isOther = ({ name, contains }: AgentRow): boolean =>
  contains.length === 0 ? name !== 'lidocaine' : contains.some((one) => one !== 'lidocaine');

export const check: Check = {
  code: 'dose/pregnancy',
  severity: 'information',
  title: 'Pregnancy: an anesthetic other than lidocaine, or a procedure that can wait',
  why: 'The academy’s guideline considers lidocaine usable in pregnancy and the evidence on others too thin, and postpones elective procedures until after delivery. A suspected cancer or a rash that needs a diagnosis is not postponed; small amounts of lidocaine with epinephrine are considered safe.',
  sources: [
    { source: 'aad-2016-summary', mark: 'Q' },
    { source: 'pregnancy-procedures', mark: 'Q' },
  ],
  messages: {
    elective:
      'The patient is or may be pregnant, and by its question this procedure can wait. The guideline postpones elective procedures until after delivery; if it was not elective, write why.',
    main: '{agent} in pregnancy: the guideline finds too little evidence on it, and considers lidocaine usable. Consider lidocaine alone.',
    ...saidHere,
  },
  unclear: unclearCaution,
  find: inPregnancy,
};
