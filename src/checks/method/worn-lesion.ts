import { within } from '../../note/tree/tree.ts';
import { rowsIn } from '../words.ts';
import { ofSuspected, type Judge } from './_suspected.ts';
import type { Check } from '../check.ts';
import { mentions } from './_procedure.ts';

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

export const check: Check = {
  code: 'method/worn-lesion',
  severity: 'information',
  title: 'A scratched, eroded or fading lesion of an inflammatory disease',
  why: 'Scratching, infection and healing hide the disease under the microscope; an intact, typical lesion shows it. Tumors and ulcers are not reported.',
  sources: [{ source: 'lesion-choice', mark: 'Q' }],
  messages: {
    main: 'The question is {disease}, and the lesion is described as {word}: it may show only scratching or healing. An intact lesion is better; if the sample was taken beside it, write `relation`.',
    question: 'the question to the pathologist',
  },
  ...ofSuspected('a fresh lesion', worn),
};
