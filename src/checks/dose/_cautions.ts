import type { Range } from '../../note/tree/tree.ts';
import type { CautionRow } from '../../reference/cautions.ts';
import { conditionNames, medicineNames } from '../lookups.ts';
import { patientTexts, type Told } from '../patient-texts.ts';
import { shared } from '../shared.ts';
import { readingsIn } from './_readings.ts';

/** A condition or medicine that calls for care, and where the note says so or leaves it open. */
export interface Caution {
  readonly row: CautionRow;
  readonly at: Range;
  /** Whether the note leaves it open that the patient has it: then it is a warning at most. */
  readonly open: boolean;
  /** As it was typed, where it is misspelled. */
  readonly typed?: string | undefined;
}

/** Words that mean a condition where they are all that is written, and anything in a sentence. */
const onlyAlone: ReadonlySet<string> = new Set(['expecting']);

const onTheSkinOnly = /\b(?:topical|cream|ointment|lotion|gel|drops|eye|ophthalmic|gtts?)\b/i;

/** What is put on the skin and reaches the blood all the same: its ointment is for the heart, and its gel has caused methemoglobinemia. */
const throughTheSkin: ReadonlySet<string> = new Set(['nitroglycerin', 'dapsone']);

/** Whether the words between commas about a medicine say that it is put on the skin or into the eyes. */
function isOnTheSkin({ row, leaf, from, to }: Told<CautionRow>): boolean {
  const text = leaf.value ?? '';
  if (row.kind !== 'medicine' || throughTheSkin.has(row.name) || !onTheSkinOnly.test(text)) return false;
  const start = Math.max(...[',', ';', '.', '('].map((mark) => text.lastIndexOf(mark, from - 1))) + 1;
  const rest = text.slice(to).search(/[,;.()]/);
  return onTheSkinOnly.test(text.slice(start, rest < 0 ? text.length : to + rest));
}

/** What is before "pad" that says that it is no disease of arteries. */
const padOf =
  /\b(?:heating|ground(?:ing)?|return|gauze|eye|nail|foot|toe|finger|sterile|prep|alcohol|knee|thumb) $/i;

const isAside = (told: Told<CautionRow>): boolean => {
  const text = told.leaf.value ?? '';
  if (text.slice(told.from, told.to) === 'pad' && padOf.test(text.slice(0, told.from))) return true;
  const isPart = told.to - told.from < text.trim().length;
  return isPart && onlyAlone.has(text.slice(told.from, told.to).toLowerCase());
};

const cautionIn = (told: Told<CautionRow>): Caution => ({
  row: told.row,
  at: told.at,
  open: told.answer === 'unclear',
  typed: told.why === 'slip' ? told.leaf.value?.slice(told.from, told.to) : undefined,
});

/** What the note mentions the patient that calls for care, each thing once and what is said before what is open. */
export const cautionsOf = shared((subject): readonly Caution[] => {
  const { tables } = subject;
  const found = new Map<CautionRow, Caution>();
  const texts = patientTexts(subject);
  const add = (caution: Caution): void => {
    const before = found.get(caution.row);
    if (before === undefined || (before.open && !caution.open)) found.set(caution.row, caution);
  };
  for (const lookup of [conditionNames(tables), medicineNames(tables)])
    for (const told of texts.told(lookup)) if (!isOnTheSkin(told) && !isAside(told)) add(cautionIn(told));
  for (const leaf of texts.leaves)
    for (const { name, at } of readingsIn(leaf, tables)) {
      const row = tables.cautions.find(name);
      if (row !== undefined) add({ row, at, open: false });
    }
  return [...found.values()];
});
