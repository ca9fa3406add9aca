import type { Procedure } from '../../note/generated/types.ts';
import { phrasesOf, type Mention } from '../../note/phrases.ts';
import { within, type Range } from '../../note/tree.ts';
import type { DiagnosisRow, SampleNeed } from '../../reference/diagnoses.ts';
import type { Check, Report, Subject } from '../check.ts';

/** A disease that the question suspects, and where it stands. */
interface Suspected {
  readonly name: string;
  readonly at: Range;
}

type Mentions = readonly Mention<DiagnosisRow>[];

const read = new WeakMap<Subject, Map<Procedure, Mentions>>();

/** The diseases that a question mentions, read once for all checks of a note. */
function mentionsIn(procedure: Procedure, subject: Subject): Mentions {
  const known = read.get(subject) ?? new Map<Procedure, Mentions>();
  read.set(subject, known);
  const before = known.get(procedure);
  if (before !== undefined) return before;
  const mentions = phrasesOf(subject.tables.diagnoses).mentionsIn(procedure.question?.value ?? '');
  known.set(procedure, mentions);
  return mentions;
}

/** What stands behind a disease that a year dates: "melanoma of the left thigh in 2014". */
const dated = /^(?: (?:of|on) (?:[a-z]+ ){0,3}[a-z]+)?,? (?:in )?\(?((?:19|20)\d\d)\b/i;

/** Whether a question that asks nothing gives a disease a year before the visit, and so tells of the past. */
function isPast(question: string, { to, standing }: Mention<DiagnosisRow>, { note }: Subject): boolean {
  const year = standing === 'asserted' ? dated.exec(question.slice(to))?.[1] : undefined;
  const visit = note.visit?.value?.date.slice(0, 4);
  return year !== undefined && visit !== undefined && year < visit;
}

/** "papule in an area of": what stands before hair loss that is where another lesion lies. */
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

/** The disease of a kind that a question suspects; what it denies, thinks unlikely or tells of the past does not count. */
function suspected(procedure: Procedure, need: SampleNeed, subject: Subject): Suspected | undefined {
  const { question } = procedure;
  const text = question?.value ?? '';
  const mention = mentionsIn(procedure, subject).find(
    (one) =>
      one.row.needs === need &&
      (one.standing === 'asserted' || one.standing === 'asked') &&
      !isMillimeters(text, one) &&
      !isPlace(text, one) &&
      !isPast(text, one, subject),
  );
  if (question === undefined || mention === undefined) return undefined;
  return { name: mention.row.name, at: within(question.node, mention.from, mention.to) };
}

/** What a check finds in a procedure whose question suspects a disease; undefined where nothing is wrong. */
export type Judge = (procedure: Procedure, subject: Subject) => Report | undefined;

/** A check of every procedure whose question suspects a disease of one kind. */
export const ofSuspected = (need: SampleNeed, judge: Judge): NonNullable<Check['find']> =>
  function (subject) {
    const found: Report[] = [];
    for (const procedure of subject.note.procedures ?? []) {
      const disease = suspected(procedure, need, subject);
      const report = disease && judge(procedure, subject);
      if (disease === undefined || report === undefined) continue;
      const related = { ...disease.at, form: 'question', args: {} };
      found.push({ ...report, args: { disease: disease.name, ...report.args }, related: [related] });
    }
    return found;
  };
