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
  why: 'Scratching, infection and healing lay their own picture over that of the disease; a typical lesion that is whole shows it. Of tumors and ulcers nothing is said.',
  sources: [{ source: 'lesion-choice', mark: 'Q' }],
  messages: {
    main: 'The question is {disease}, and the lesion is described as {word}: it may show the scratching or healing only. If a whole lesion was there, it serves better; if this is beside it, write `relation`.',
    question: 'what is asked',
  },
  ...ofSuspected('a fresh lesion', worn),
};
