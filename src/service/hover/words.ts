import { rowsSaid } from '../../checks/words.ts';
import { checkOf } from '../../checks/index.ts';
import type { WordTable } from '../../note/words/word-table.ts';
import type { Tables } from '../../practice/tables.ts';
import type { HemostasisRow, Stops } from '../../reference/hemostasis.ts';
import type { Concern } from '../../reference/implants.ts';
import type { WordRow } from '../../reference/types.ts';
import type { Row, Section } from './section.ts';

/** The lines that a text names: as it is, or in a longer text. */
function named<One extends WordRow>(table: WordTable<One>, text: string): readonly One[] {
  const row = table.find(text);
  return row === undefined ? rowsSaid(table, text) : [row];
}

/** What is published on the blood thinners that a medicine's text names. It tells and never judges. */
export function thinnerSections(text: string, { bloodThinners, advice }: Tables): readonly Section[] {
  return named(bloodThinners, text).map(({ name }) => ({
    title: `${name} and small procedures of the skin`,
    rows: advice.thinners.filter((one) => one.of?.includes(name) !== false),
  }));
}

const stops: Readonly<Partial<Record<Stops, string>>> = {
  heat: 'A hot wire: no current passes through the patient.',
  current: 'Current passes through the patient: not with a pacemaker near, an ICD or a stimulator.',
  bipolar: 'Current passes only between the tips.',
  either: 'May mean a hot wire or current; counts as current until it is written more exactly.',
  stitch: 'A stitch: it has to come out unless it is absorbed.',
};

/** What follows from a word for how bleeding was stopped. */
export function hemostasisSections(text: string, { hemostasis }: Tables): readonly Section[] {
  return named(hemostasis, text).map((one) => ({ title: one.name, rows: consequences(one) }));
}

function consequences(one: HemostasisRow): readonly Row[] {
  const meaning = one.stops === undefined ? undefined : stops[one.stops];
  return [
    ...(meaning === undefined ? [] : [{ text: meaning }]),
    ...(one.flammable === true ? [{ text: 'Burns until it is dry: no heat and no current before.' }] : []),
    ...(one.stains === true
      ? [{ text: 'Leaves iron in the skin, which may stain it and confuse the pathologist.' }]
      : []),
    ...(one.contains === undefined ? [] : [{ text: `Contains: ${one.contains.join(', ')}.` }]),
    ...(one.mayContain === undefined ? [] : [{ text: `May contain: ${one.mayContain.join(', ')}.` }]),
  ];
}

const concerns: Readonly<Record<Concern, string>> = {
  pacemaker:
    'No electrosurgical current near it; far away short bursts at low power. Heat cautery passes no current.',
  forbidden: 'No electrosurgical current at all. Heat cautery passes no current through the patient.',
  cochlear: 'No monopolar current on head and neck.',
  ask: 'No rule was found for current with it: ask its maker or the clinic that looks after it.',
  unruled:
    'The patient may depend on it, and no rule was found for current with it: ask its maker or the clinic that looks after it.',
  passive: 'Not an electronic device; current does not disturb it.',
  none: 'No implant.',
  unknown: 'Not known: find out before current is used.',
};

/** What electrosurgical current means for an implant. */
export function implantSections(text: string, { implants }: Tables): readonly Section[] {
  return named(implants, text).map(({ name, concern, source, mark }) => ({
    title: name,
    rows: [{ text: concerns[concern], source, mark }],
  }));
}

/** What the check of a code finds, and why it matters. */
export function checkSections(code: string): readonly Section[] {
  const check = checkOf(code.trim());
  return check === undefined ? [] : [{ title: check.title, rows: [{ text: check.why }] }];
}
