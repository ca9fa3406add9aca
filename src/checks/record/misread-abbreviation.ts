import type { Report } from '../../note/tree/finding.ts';
import type { Note } from '../../note/generated/types.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import { once } from '../../note/text/once.ts';
import type { Respelling } from '../../note/values/reading.ts';
import { within } from '../../note/tree/tree.ts';
import type { AbbreviationRow } from '../../reference/abbreviations.ts';
import type { Check, Subject } from '../check.ts';
import { respell } from '../quantity/_respell.ts';

/** The free texts in which orders, doses and sides are written. */
function textsOf(note: Note): readonly (Leaf<string> | undefined)[] {
  const { patient, remarks: ofVisit = [], procedures = [] } = note;
  const found: (Leaf<string> | undefined)[] = [...(patient?.medications ?? []), ...ofVisit];
  for (const { site, landmarks, lesion, complications, remarks = [], specimen = [] } of procedures) {
    found.push(site, landmarks, lesion, complications, ...remarks);
    for (const { results = [] } of specimen) for (const { next } of results) found.push(next);
  }
  return [...found, ...laterTextsOf(note)];
}

const laterTextsOf = ({ events = [] }: Note): readonly (Leaf<string> | undefined)[] =>
  events.flatMap(({ action, signs, outcome }) => [action, signs, outcome]);

/** All abbreviations as one expression, the first group that matches is that of the row. */
const patternOf = once(
  (rows: readonly AbbreviationRow[]): RegExp =>
    new RegExp(rows.map((row) => `(${row.pattern})`).join('|'), 'gu'),
);

/** Whether a text can hold one at all: most have nothing of the kind. */
const worthALook = /q\.?[doh]|Q|TIW|tiw|D\/C|d\/c|\d ?(?:IU|u|U|cc)|os\b|O[DSU]|TAC/;

function misread({ note, tables }: Subject): readonly Report[] {
  const found: Report[] = [];
  const rows = tables.abbreviations;
  for (const leaf of textsOf(note)) {
    if (leaf?.value === undefined || !worthALook.test(leaf.value)) continue;
    for (const match of leaf.value.matchAll(patternOf(rows))) {
      const row = rows[match.slice(1).findIndex((group: string | undefined) => group !== undefined)];
      if (row === undefined) continue;
      const typed = match[0];
      const { instead, takenFor } = row;
      const data: Respelling = { typed, instead, sure: instead.length === 1 };
      found.push({
        at: within(leaf.node, match.index, match.index + typed.length),
        args: { typed, takenFor, instead: instead.join(' or ') },
        data,
      });
    }
  }
  return found;
}

export const check: Check = {
  code: 'record/misread-abbreviation',
  severity: 'information',
  title: 'An abbreviation that has been misread',
  why: 'These abbreviations are on a published list, since patients were harmed when they were taken for something else. Those of the list that mean a skin disease are left out.',
  sources: [
    { source: 'ismp-error-prone', mark: 'Q' },
    { source: 'do-not-use-list', mark: 'Q' },
    { source: 'ismp-drug-names', mark: 'M' },
  ],
  messages: {
    main: '"{typed}" has been taken for {takenFor}. Write {instead}.',
  },
  find: misread,
  fix: respell,
};
