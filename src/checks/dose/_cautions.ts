import { phrasesOf } from '../../note/words/phrases.ts';
import { within, type Range } from '../../note/tree/tree.ts';
import type { CautionRow } from '../../reference/cautions.ts';
import type { Subject } from '../check.ts';
import { shared } from '../shared.ts';
import { patientTexts } from '../patient-texts.ts';

/** A condition or medicine that calls for care, and where the note says that the patient has it. */
export interface Caution {
  readonly row: CautionRow;
  readonly at: Range;
}

/** Words that mean a condition where they stand alone, and anything in a sentence. */
const onlyAlone: ReadonlySet<string> = new Set(['expecting']);

const onTheSkinOnly = /\b(?:topical|cream|ointment|lotion|gel|drops|eye|ophthalmic)\b/i;

/** Whether a text is one word, and none that calls for care: a look at the table spares reading it. */
const isOther = (text: string, { cautions }: Subject['tables']): boolean =>
  /^[a-z]+$/.test(text) && !text.endsWith('s') && cautions.find(text) === undefined;

/** Whether anything calls for care. */
export const isAnyCaution = (subject: Subject): boolean => cautionsOf(subject).length > 0;

/** What of the patient's conditions and medicines, and of what remarks say of them, calls for care, each thing once; read once for a note. */
export const cautionsOf = shared(({ note, tables }: Subject): readonly Caution[] => {
  const found = new Map<CautionRow, Caution>();
  const phrases = phrasesOf(tables.cautions);
  for (const leaf of patientTexts(note)) {
    if (leaf.value === undefined || isOther(leaf.value, tables) || onTheSkinOnly.test(leaf.value)) continue;
    for (const { row, from, to, standing } of phrases.mentionsIn(leaf.value)) {
      if (standing !== 'asserted' || found.has(row)) continue;
      const isPart = to - from < leaf.value.trim().length;
      if (isPart && onlyAlone.has(leaf.value.slice(from, to).toLowerCase())) continue;
      found.set(row, { row, at: within(leaf.node, from, to) });
    }
  }
  return [...found.values()];
});
