import type { Check } from '../check.ts';
import type { Note } from '../../note/generated/types.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import { phrasesOf } from '../../note/words/phrases.ts';
import { within, type Range } from '../../note/tree/tree.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Report, Subject } from '../check.ts';
import { patientTexts } from '../patient-texts.ts';
import { allergiesOf, partsOf, type Allergies } from './_allergies.ts';

/** The texts in which an allergy is written that belongs under `allergies`. */
const textsOf = (note: Note): readonly Leaf<string>[] =>
  note.patient?.skin === undefined ? patientTexts(note) : [...patientTexts(note), ...note.patient.skin];

const tells = /\ballerg(?:y|ic|ies)\b|anaphyla|\bhives\b/i;

interface Told extends Range {
  readonly word: string;
  readonly names: readonly string[];
}

/** What a text says that the patient is allergic to, as far as it is in the tables. */
function toldIn(leaf: Leaf<string>, { agents, allergens }: Tables): readonly Told[] {
  const text = leaf.value;
  if (text === undefined || !tells.test(text)) return [];
  const told = [
    ...phrasesOf(agents)
      .mentionsIn(text)
      .map((one) => ({ ...one, names: partsOf(one.row) })),
    ...phrasesOf(allergens)
      .mentionsIn(text)
      .filter(({ row }) => row.kind === 'substance' || row.kind === 'class')
      .map((one) => ({ ...one, names: [one.row.name] })),
  ];
  return told
    .filter(({ standing }) => standing === 'asserted' || standing === 'past')
    .map(({ row, from, to, names }) => ({ ...within(leaf.node, from, to), word: row.name, names }));
}

const isListed = ({ names }: Told, allergies: Allergies, listed: ReadonlySet<string>): boolean =>
  names.some((name) => allergies.agents.has(name) || allergies.substances.has(name) || listed.has(name));

function notListed(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  for (const leaf of textsOf(subject.note)) {
    const told = toldIn(leaf, subject.tables);
    if (told.length === 0) continue;
    const allergies = allergiesOf(subject);
    const listed = new Set([...allergies.classes.values()].map(({ word }) => word));
    for (const one of told)
      if (!isListed(one, allergies, listed))
        found.push({ at: { start: one.start, end: one.end }, args: { word: one.word } });
  }
  return found;
}

export const check: Check = {
  code: 'allergy/not-listed',
  severity: 'warning',
  title: 'An allergy that stands elsewhere, and not under allergies',
  why: 'Only what stands under `allergies` is compared with drugs, preparations, dressings and sutures. An allergy among conditions or remarks protects nobody.',
  sources: [{ source: 'format', mark: 'format' }],
  messages: {
    main: 'An allergy to {word} is told of here, and `allergies` does not have it, so nothing is compared with it. Write it there too.',
  },
  find: notListed,
};
