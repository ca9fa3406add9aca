import type { Report } from '../../note/tree/finding.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import type { Range } from '../../note/tree/tree.ts';
import { asMeant } from '../../note/words/as-meant.ts';
import { Lookup } from '../../note/words/mentions/lookup.ts';
import { readMentions } from '../../note/words/mentions/read.ts';
import type { WordRow } from '../../reference/types.ts';
import type { Check, Subject } from '../check.ts';
import { allergyNames, namesUsed } from '../lookups.ts';
import { toldIn } from '../patient-texts.ts';
import { rowsIn } from '../words.ts';
import { allergiesOf, entryOf, type Allergies, type Named } from '../allergies.ts';
import { format } from '../sources.ts';

/** What a table knows of a drug: the allergens that it means. */
const allergensIn = (text: string, { tables }: Subject): readonly string[] =>
  readMentions(text, allergyNames(tables)).flatMap(({ row, answer }) =>
    answer === 'denied' || row.of !== 'allergens' ? [] : [row.name, ...(row.allergen.covers ?? [])],
  );

const reportOf = (at: Range, drug: string, named: Named): Report => ({
  at,
  ...(named.mild || named.ease() !== undefined ? { form: 'eased', severity: 'warning' as const } : {}),
  args: { drug, allergy: named.word },
  related: entryOf(named),
});

/** What is in the vial besides the drug, of which a product may be free: a warning. */
function heldIn(drug: Leaf<string>, allergies: Allergies, { tables }: Subject): Report | undefined {
  for (const { row, answer } of readMentions(drug.value ?? '', allergyNames(tables)))
    for (const { to } of answer === 'denied' || row.of !== 'allergens' ? [] : (row.allergen.holds ?? [])) {
      const named = allergies.substances.get(to);
      if (named === undefined) continue;
      const args = { drug: drug.text, substance: to, allergy: named.word };
      return { at: drug, form: 'holds', severity: 'warning', args, related: entryOf(named) };
    }
  return undefined;
}

function known(drug: Leaf<string>, allergies: Allergies, subject: Subject): Report | undefined {
  const text = asMeant(drug.value ?? '', subject.tables.allergens, subject.tables.agents);
  for (const name of allergensIn(text, subject)) {
    const named = allergies.substances.get(name);
    if (named !== undefined) return reportOf(drug, drug.text, named);
  }
  return undefined;
}

/** The words of a drug before its strength. */
const nameIn = (text: string): string => /^[a-z]{4,}(?:[- ][a-z]{3,})*/i.exec(text.trim())?.[0] ?? '';

/** A drug that no table knows is looked for by its own name among the allergies. */
function byName(drug: Leaf<string>, { note, tables }: Subject): Report | undefined {
  const name = nameIn(drug.value ?? '');
  if (name === '' || rowsIn(tables.agents, drug).length > 0) return undefined;
  const lookup = new Lookup<WordRow>('allergy', { rows: [{ name, synonyms: [] }], lasts: () => true });
  for (const { to } of note.patient?.allergies ?? []) {
    const mention = readMentions(to?.value ?? '', lookup).find(({ answer }) => answer !== 'denied');
    if (to === undefined || mention === undefined) continue;
    const open = mention.answer === 'unclear';
    const related = [{ start: to.start, end: to.end, form: 'entry', args: { allergy: to.text } }];
    const args = { drug: drug.text, allergy: to.text };
    return { at: drug, ...(open ? { form: 'eased', severity: 'warning' } : {}), args, related };
  }
  return undefined;
}

/** A free text that may mention an injection. */
const injecting = /\b(?:re-?)?inject|\bintralesional|\bIL[TK]?\b/i;

/** The words around a place up to the next comma or stop. */
function around(text: string, at: number): string {
  const start = Math.max(...['.', ',', ';'].map((mark) => text.lastIndexOf(mark, at)));
  const length = text.slice(at).search(/[.,;]/);
  return text.slice(start + 1, length < 0 ? text.length : at + length);
}

/** Drugs that a free text says were injected. */
function toldOf(
  leaf: Leaf<string> | undefined,
  allergies: Allergies,
  { tables }: Subject,
): readonly Report[] {
  const text = leaf?.value;
  if (leaf === undefined || text === undefined || !injecting.test(text)) return [];
  return toldIn(leaf, namesUsed(tables.allergens)).flatMap(({ row, at, from, answer }) => {
    const named = row.kind === 'substance' ? allergies.substances.get(row.name) : undefined;
    const isGiven = answer === 'said' && injecting.test(around(text, from));
    return named === undefined || !isGiven ? [] : [reportOf(at, row.name, named)];
  });
}

function judge(subject: Subject): readonly Report[] {
  const { note } = subject;
  if ((note.patient?.allergies ?? []).length === 0) return [];
  const parts = [...(note.procedures ?? []), ...(note.events ?? [])];
  const drugs = parts.flatMap(({ injected = [] }) => injected.flatMap(({ drug }) => drug ?? []));
  const allergies = allergiesOf(subject);
  const texts = [
    ...(note.procedures ?? []).flatMap(({ complications, remarks = [] }) => [complications, ...remarks]),
    ...(note.remarks ?? []),
    ...(note.events ?? []).map(({ action }) => action),
  ];
  return [
    ...drugs.flatMap(
      (drug) =>
        known(drug, allergies, subject) ?? heldIn(drug, allergies, subject) ?? byName(drug, subject) ?? [],
    ),
    ...texts.flatMap((leaf) => toldOf(leaf, allergies, subject)),
  ];
}

export const check: Check = {
  code: 'allergy/injected',
  severity: 'error',
  title: 'An injected drug to which the patient is allergic',
  why: 'What is injected cannot be wiped off, and reaches the blood. A local anesthetic under `injected` is judged as an anesthetic.',
  sources: [format, { source: 'us-label-triamcinolone', mark: 'Q' }],
  messages: {
    main: '{drug} was injected, and the patient is listed as allergic to {allergy}. If it was given, watch for a reaction and tell the clinician; if not, correct the drug or the list.',
    eased:
      '{drug} was injected, and the list of allergies names {allergy}. Ask what happened, and choose another if in doubt.',
    holds:
      '{drug} was injected; its label lists {substance}, and the patient is listed as allergic to {allergy}. Read the vial, and ask what happened.',
    entry: 'the patient is listed as allergic to {allergy} here',
  },
  alternatives: { readAs: [] },
  find: judge,
};
