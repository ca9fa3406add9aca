import type { Procedure } from '../../note/generated/types.ts';
import { phrasesOf, type Mention } from '../../note/words/phrases.ts';
import { within } from '../../note/tree/tree.ts';
import type { LesionRow } from '../../reference/lesions.ts';
import type { Check, Report, Subject } from '../check.ts';
import { rowsIn } from '../words.ts';
import { ofSuspected, type Judge } from './_suspected.ts';

/** What the lesion's description says of its surface, without what it denies. */
const mentions = ({ lesion }: Procedure, { tables }: Subject): readonly Mention<LesionRow>[] =>
  phrasesOf(tables.lesions)
    .mentionsIn(lesion?.value ?? '')
    .filter(({ standing }) => standing === 'asserted');

function flatForScissors(procedure: Procedure, subject: Subject): Report | undefined {
  const { method, lesion } = procedure;
  if (method === undefined || lesion === undefined) return undefined;
  if (rowsIn(subject.tables.methods, method)[0]?.name !== 'scissor') return undefined;
  const said = mentions(procedure, subject);
  const flat = said.find(({ row }) => row.says === 'flat');
  if (flat === undefined || said.some(({ row }) => row.says === 'raised')) return undefined;
  const related = [{ ...within(lesion.node, flat.from, flat.to), form: 'lesion', args: {} }];
  return { at: method, args: { lesion: flat.row.name }, related };
}

const aside: ReadonlySet<string | undefined> = new Set(['perilesional', 'edge', 'uninvolved']);
/** Of tumors and ulcers an eroded surface is part of the picture. */
const tumor = /carcinoma|\b(?:BCC|SCC|SCCIS)\b|melanoma|keratosis|lymphoma|ulcer|tumou?r|malignan/i;

const worn: Judge = (procedure, subject) => {
  const { lesion, question, relation } = procedure;
  if (lesion === undefined || tumor.test(question?.value ?? '') || tumor.test(lesion.value ?? ''))
    return undefined;
  if (aside.has(rowsIn(subject.tables.relations, relation)[0]?.name)) return undefined;
  const found = mentions(procedure, subject).find(({ row }) => row.says === 'worn');
  return found === undefined
    ? undefined
    : { at: within(lesion.node, found.from, found.to), args: { word: found.row.name } };
};

export const checks: readonly Check[] = [
  {
    code: 'method/scissor-flat',
    severity: 'information',
    title: 'Scissors for a flat lesion',
    why: 'Scissors take off what stands up from the skin, such as a skin tag; of a flat lesion they take little but epidermis.',
    sources: [{ source: 'dermatology-chapter-146', mark: 'Q' }],
    messages: {
      main: 'Scissors are for what stands up from the skin, and the lesion is described as {lesion}. Check method and lesion.',
      lesion: 'the lesion',
    },
    find: (subject) =>
      (subject.note.procedures ?? [])
        .map((procedure) => flatForScissors(procedure, subject))
        .filter((report) => report !== undefined),
  },
  {
    code: 'method/worn-lesion',
    severity: 'information',
    title: 'A scratched, eroded or fading lesion of an inflammatory disease',
    why: 'Scratching, infection and healing lay their own picture over that of the disease; a typical lesion that is whole shows it. Of tumors and ulcers nothing is said.',
    sources: [{ source: 'lesion-choice', mark: 'Q' }],
    messages: {
      main: 'The question is {disease}, and the lesion is described as {word}: it may show the scratching or healing only. If a whole lesion was there, it serves better; if this is beside it, write `relation`.',
      question: 'what is asked',
    },
    ...ofSuspected('a fresh lesion', worn),
  },
];
