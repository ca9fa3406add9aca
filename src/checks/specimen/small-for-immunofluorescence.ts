import type { Report } from '../../note/tree/finding.ts';
import type { Procedure, Specimen } from '../../note/generated/types.ts';
import type { Tables } from '../../practice/tables.ts';
import type { Check } from '../check.ts';
import { punchOf } from '../punch.ts';
import { rowsIn } from '../words.ts';

const isForImmunofluorescence = ({ tests = [] }: Specimen, tables: Tables): boolean =>
  tests.some((leaf) => rowsIn(tables.tests, leaf).some(({ name }) => name === 'direct immunofluorescence'));

/** Least diameters of a punch in mm: alone, and where it is divided. */
const least = { whole: 3, divided: 5 } as const;

function small(procedure: Procedure, tables: Tables): Report | undefined {
  const punch = punchOf(procedure, tables);
  if (punch === undefined || punch.mm >= least.divided) return undefined;
  const sent = (procedure.specimen ?? []).filter(({ keys }) => !keys.has('not-sent'));
  if (!sent.some((one) => isForImmunofluorescence(one, tables))) return undefined;
  const args = { size: punch.at.text, count: sent.length };
  if (punch.mm < least.whole) return { at: punch.at, args };
  return sent.length > 1 ? { at: punch.at, form: 'divided', args } : undefined;
}

export const check: Check = {
  code: 'specimen/small-for-immunofluorescence',
  severity: 'information',
  title: 'A punch too small for immunofluorescence, or too small to be divided',
  why: 'Laboratories want 4 to 5 mm for direct immunofluorescence, an older entry accepts 3 mm; a piece that is divided for two containers should have 5 mm or more.',
  sources: [{ source: 'immunofluorescence-sizes', mark: 'Q' }],
  messages: {
    main: 'A punch of {size} is small for immunofluorescence; laboratories want 4 to 5 mm, the smallest 3 mm. Ask the laboratory whether it is enough.',
    divided:
      '{count} specimens come from one punch of {size}; laboratories want 5 mm or more where a piece is divided. If each had its own punch, write a procedure for each.',
  },
  sourcesDiffer: {
    how: 'Laboratories want 4 to 5 mm, an older entry takes 3 mm. Only less than 3 mm is reported.',
    settings: ['severities'],
  },
  find: ({ note, tables }) =>
    (note.procedures ?? [])
      .map((procedure) => small(procedure, tables))
      .filter((report) => report !== undefined),
};
