import type { Report } from '../../note/tree/finding.ts';
import type { Check, Subject } from '../check.ts';
import { allergyNames, type AllergyRow } from '../lookups.ts';
import { patientTexts, toldIn, type Told } from '../patient-texts.ts';
import { allergiesOf, namesOf, type Allergies } from '../allergies.ts';
import { format } from '../sources.ts';

/** What says in a sentence that somebody reacted to something. */
const tells =
  /\b(?:allerg(?:y|ic|ies)|anaphyla\w*|hives|urticaria|welts?|rxns?|react(?:ion|ions|ed|s)?|hypersensitiv\w*|(?:alert|allergy|medical|red) bracelet|bracelet says|(?:skin|patch|prick) test (?:was )?positive|positive (?:\w+ )?(?:skin|patch|prick )?test)\b/i;

/** What was seen, which says so only with what it came from. */
const signs =
  '(?:rash|itch\\w*|swell\\w*|swollen|blister\\w*|dermatitis|contact derm|eczema|redness|wheez\\w*|angioedema|edema)';
const seenFrom = new RegExp(
  `\\b${signs}\\b(?:(?!\\b(?:settled|resolved|better|improved|treated|relieved|controlled|gone|eased)\\b)[^.;,])*\\b(?:from|after|to|with|under|w)\\b[^.;,]{0,20}$`,
  'i',
);
const sign = new RegExp(`\\b${signs}\\b`, 'i');
const causes = /\b(?:cause[sd]?|gives?|gave|gets?|got|breaks? out)\b/i;

/** Of a sentence without an end no more is looked at on each side of a name. */
const longestSentence = 1000;

/** Whether the sentence of a mention says that the patient reacted to it. */
function isAllergy({ leaf, from, to, why }: Told<AllergyRow>): boolean {
  const before = Math.max(0, from - longestSentence);
  const text = (leaf.value ?? '').slice(before, to + longestSentence);
  // What "no" leaves open is an allergy only where it is called one: "no metal, mother allergic to latex".
  const ends = why === 'order' ? ['.', ';', ','] : ['.', ';'];
  const start = Math.max(...ends.map((end) => text.lastIndexOf(end, from - before - 1))) + 1;
  const rest = text.slice(to - before).search(why === 'order' ? /[.;,]/ : /[.;]/);
  const sentence = text.slice(start, rest < 0 ? text.length : to - before + rest);
  return (
    tells.test(sentence) ||
    (causes.test(sentence) && sign.test(sentence)) ||
    seenFrom.test(text.slice(start, from - before))
  );
}

const isListed = (names: readonly string[], allergies: Allergies, listed: ReadonlySet<string>): boolean =>
  names.some((name) => allergies.agents.has(name) || allergies.substances.has(name) || listed.has(name));

/** Whether the words beside a name call it an allergy. */
const isCalledAllergy = ({ leaf: { value = '' }, from, to }: Told<AllergyRow>): boolean =>
  /^ ?(?:\w+ )?allerg/i.test(value.slice(to)) || /allerg\w*(?: \w+){0,2} $/i.test(value.slice(0, from));

/** Whether what is named can be met here at all. */
const matters = (told: Told<AllergyRow>): boolean => {
  const { row } = told;
  if (row.of === 'agents') return true;
  const { kind, onlyListed } = row.allergen;
  if (onlyListed === true && !isCalledAllergy(told)) return false;
  return kind === 'substance' || kind === 'class';
};

/** Whether any text of a note can mention a reaction: most have no word of one. */
const isAnyTold = (subject: Subject): boolean =>
  [...patientTexts(subject).leaves, ...(subject.note.patient?.skin ?? [])].some(
    ({ value = '' }) => tells.test(value) || sign.test(value),
  );

function notListed(subject: Subject): readonly Report[] {
  if (!isAnyTold(subject)) return [];
  const lookup = allergyNames(subject.tables);
  const skin = (subject.note.patient?.skin ?? []).flatMap((leaf) => toldIn(leaf, lookup));
  const told = [...patientTexts(subject).told(lookup), ...skin].filter(
    (one) => matters(one) && isAllergy(one),
  );
  if (told.length === 0) return [];
  const allergies = allergiesOf(subject);
  const listed = new Set([...allergies.classes.values()].map(({ word }) => word));
  return told
    .filter((one) => !isListed(namesOf(one.row), allergies, listed))
    .map(({ at, row, answer }) => ({
      at,
      form: answer === 'unclear' ? 'open' : 'main',
      args: { word: row.name },
    }));
}

export const check: Check = {
  code: 'allergy/not-listed',
  severity: 'warning',
  title: 'An allergy written elsewhere and not under allergies',
  why: 'Only what is under `allergies` is compared with drugs, preparations, dressings and sutures. An allergy among conditions or remarks protects nobody.',
  sources: [format],
  messages: {
    main: 'An allergy to {word} is mentioned here but is not under `allergies`, so nothing is checked against it. Write it there too.',
    open: 'A possible allergy to {word} is mentioned here and is not under `allergies`. Ask, and write it there: what it is, or `??` until it is known.',
  },
  unclear: ({ form, args }) =>
    form === 'open' ? { key: 'allergies', name: String(args['word']) } : undefined,
  find: notListed,
};
