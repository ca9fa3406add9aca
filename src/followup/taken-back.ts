import type { Addendum, Note, Specimen, Told } from '../note/generated/types.ts';
import { once } from '../note/text/once.ts';
import { plainWord } from '../note/words/word-table.ts';

/** Words of an addendum that say that somebody marked a result told who should not have. */
const mistake = String.raw`(?:by (?:a |my )?mistake|in error|mistaken(?:ly)?|erroneous(?:ly)?|wrongly|incorrect(?:ly)?)`;
const marked = String.raw`(?:marked|recorded|entered|documented|charted|noted|written)`;
const saysSo: readonly RegExp[] = [
  new RegExp(
    String.raw`\b${marked}\b[^.;]{0,60}\b(?:told|informed|notified)\b[^.;]{0,60}\b${mistake}\b`,
    'i',
  ),
  new RegExp(
    String.raw`\b${mistake}\b[^.;]{0,40}\b${marked}\b[^.;]{0,60}\b(?:told|informed|notified)\b`,
    'i',
  ),
  new RegExp(String.raw`["“]?\btold\b["”]?[^.;]{0,40}\b${marked}\b[^.;]{0,30}\b${mistake}\b`, 'i'),
  /\b(?:was|were|had|has) (?:in fact |actually |really )?not (?:been )?(?:told|informed|notified) (?:of|about) (?:the|this|that|his|her|their) (?:result|biopsy|diagnosis|path)/i,
  /\bresults? [^.;]{0,30}\b(?:was|were|had|has) (?:in fact |actually |really )?not (?:been )?(?:told|communicated|given|relayed|discussed)\b/i,
];

/** An addendum that takes back that a result was told. */
interface Withdrawal {
  readonly addendum: Addendum;
  /** The specimens that it names, in plain form; undefined where it names none and so means all. */
  readonly names: readonly string[] | undefined;
}

function withdrawalOf(addendum: Addendum, labels: readonly string[]): Withdrawal | undefined {
  const { notTold, text } = addendum;
  if (notTold !== undefined) {
    const names = notTold.flatMap(({ value }) => (value ?? '').split(/,|;|&|\band\b/i)).map(nameIn);
    return { addendum, names: names.filter((name) => name !== '') };
  }
  const words = text?.value ?? '';
  if (!saysSo.some((one) => one.test(words))) return undefined;
  const named = [...words.matchAll(/\b(?:specimens?|labels?|containers?)\s+#?(\w{1,3})\b/gi)].map(
    ([, name = '']) => plainWord(name),
  );
  const known = named.filter((name) => labels.includes(name));
  return { addendum, names: known.length === 0 ? undefined : known };
}

/** `specimen A` is called `a`. */
const nameIn = (text: string): string =>
  plainWord(text).replace(/^(?:specimens?|labels?|containers?|procedures?) #?/, '');

/**
 * What of a note says that a patient was told and was taken back by an addendum. An entry that is dated after the addendum
 * is; of entries of its own day the first gives way, unless one of an earlier day does.
 */
export const takenBack = once((note: Note): ReadonlyMap<Told, Addendum> => {
  const back = new Map<Told, Addendum>();
  const { addenda = [], procedures = [] } = note;
  if (addenda.length === 0) return back;
  const specimens = procedures.flatMap(({ specimen = [] }, at) => specimen.map((one) => ({ one, at })));
  const labels = specimens.flatMap(({ one: { label } }) =>
    label?.value === undefined ? [] : plainWord(label.value),
  );
  for (const { addendum, names } of addenda.flatMap((one) => withdrawalOf(one, labels) ?? []))
    for (const { one, at } of specimens)
      if (names === undefined || names.some((name) => isNamed(one, at, name)))
        for (const entry of entriesOf(one, addendum)) back.set(entry, addendum);
  return back;
});

const entriesOf = ({ results = [] }: Specimen, addendum: Addendum): readonly Told[] =>
  results.flatMap(({ told = [] }) => withdrawn(told, addendum));

const isNamed = ({ label }: Specimen, at: number, name: string): boolean =>
  label?.value === undefined ? name === String(at + 1) : plainWord(label.value) === name;

function withdrawn(told: readonly Told[], { at }: Addendum): readonly Told[] {
  const day = at?.value?.date;
  if (day === undefined) return told;
  const earlier = told.filter(({ on }) => on?.value === undefined || on.value < day);
  return earlier.length > 0 ? earlier : told.filter(({ on }) => on?.value === day).slice(0, 1);
}
