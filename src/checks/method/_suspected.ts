import type { Report } from '../../note/tree/finding.ts';
import type { Procedure } from '../../note/generated/types.ts';
import { once } from '../../note/text/once.ts';
import { remembered } from '../../note/text/remembered.ts';
import { phrasesOf, type Mention } from '../../note/words/phrases.ts';
import { within, type Range } from '../../note/tree/tree.ts';
import type { Tables } from '../../practice/tables.ts';
import type { DiagnosisRow, SampleNeed } from '../../reference/diagnoses.ts';
import { mayTellOfAnother, readMentions } from '../../note/words/mentions/read.ts';
import type { Check, Subject } from '../check.ts';
import { diseaseNames } from '../lookups.ts';
import { shared } from '../shared.ts';

/** A disease that the question suspects, and where it is. */
interface Suspected {
  readonly name: string;
  readonly at: Range;
}

/** What is after a disease that a year dates: "melanoma of the left thigh in 2014". */
const dated = /^(?: (?:of|on) (?:[a-z]+ ){0,3}[a-z]+)?,? (?:in )?\(?((?:19|20)\d\d)\b/i;

/** Whether a question that asks nothing gives a disease a year before the visit, and so is about the past. */
function isPast(question: string, { to, standing }: Mention<DiagnosisRow>, { note }: Subject): boolean {
  const year = standing === 'asserted' ? dated.exec(question.slice(to))?.[1] : undefined;
  const visit = note.visit?.value?.date.slice(0, 4);
  return year !== undefined && visit !== undefined && year < visit;
}

/** "papule in an area of": what is before hair loss that is where another lesion is. */
const place = /\b(?:in|within|inside|on|amid|near|beside|next to)\s(?:[a-z-]+\s){0,5}$/i;
const growth =
  /carcinoma|\b(?:AK|BCC|SCC|SCCIS|SK)\b|melanoma|keratosis|nevus|naevus|lymphoma|tumou?r|malignan|papule|nodule|cyst|lesion|growth/i;

/** Whether a question names hair loss only as the place of what it asks about. */
const isPlace = (question: string, { row, from }: Mention<DiagnosisRow>): boolean =>
  row.needs === 'hair' && place.test(question.slice(0, from)) && growth.test(question);

/** "6 mm" is no malignant melanoma. */
const isMillimeters = (question: string, { from, to, standing }: Mention<DiagnosisRow>): boolean =>
  to - from === 2 &&
  (/\d\s*$/.test(question.slice(0, from)) || (standing === 'asserted' && question.slice(from, to) === 'mm'));

interface Question {
  readonly procedure: Procedure;
  readonly need: SampleNeed;
  readonly disease: Suspected;
}

/**
 * What the questions of a note suspect, of each kind the first, read once for all checks. What a question denies,
 * thinks unlikely or is about the past does not count.
 */
const questionsOf = shared((subject: Subject): readonly Question[] => {
  const found: Question[] = [];
  const phrases = phrasesOf(subject.tables.diagnoses);
  for (const procedure of subject.note.procedures ?? []) {
    const { question } = procedure;
    const text = question?.value;
    if (question === undefined || text === undefined) continue;
    const kinds = new Set<SampleNeed>();
    for (const mention of phrases.mentionsIn(text)) {
      const { needs, name } = mention.row;
      if (kinds.has(needs) || !isSuspected(text, mention, subject)) continue;
      kinds.add(needs);
      const at = within(question.node, mention.from, mention.to);
      found.push({ procedure, need: needs, disease: { name, at } });
    }
  }
  return found;
});

const isSuspected = (text: string, mention: Mention<DiagnosisRow>, subject: Subject): boolean =>
  (mention.standing === 'asserted' || mention.standing === 'asked') &&
  !isMillimeters(text, mention) &&
  !isPlace(text, mention) &&
  !isPast(text, mention, subject) &&
  !isOfAnother(text, mention, subject);

/** Where a question names the disease of another person. */
const othersIn = once((tables: Tables) =>
  remembered((text) => {
    const lookup = diseaseNames(tables);
    if (!mayTellOfAnother(text, lookup)) return [];
    return readMentions(text, lookup).filter(({ why }) => why === 'other person');
  }),
);

/** Whether a question mentions another person: "mother had melanoma". */
const isOfAnother = (text: string, { from, to }: Mention<DiagnosisRow>, { tables }: Subject): boolean =>
  othersIn(tables)(text).some((one) => one.from < to && one.to > from);

/** What a check finds in a procedure whose question suspects a disease; undefined where nothing is wrong. */
export type Judge = (procedure: Procedure, subject: Subject) => Report | undefined;

/** How every procedure is judged whose question suspects a disease of one kind. */
export const ofSuspected = (need: SampleNeed, judge: Judge): Pick<Check, 'find'> => ({
  find(subject) {
    const found: Report[] = [];
    for (const { procedure, need: own, disease } of questionsOf(subject)) {
      const report = own === need ? judge(procedure, subject) : undefined;
      if (report === undefined) continue;
      const related = { ...disease.at, form: 'question', args: {} };
      found.push({ ...report, args: { disease: disease.name, ...report.args }, related: [related] });
    }
    return found;
  },
});
