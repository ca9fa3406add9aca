import type { Report } from '../../note/tree/finding.ts';
import type { Closure, Procedure } from '../../note/generated/types.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import type { Tables } from '../../practice/tables.ts';
import type { SutureSizeRow } from '../../reference/suture-sizes.ts';
import type { Check, Subject } from '../check.ts';
import { rowsIn } from '../words.ts';

/** The zeros of a size: 4 of 4-0; thicker than 0 it goes below 1. */
const zerosOf = (size: string): number => (size.includes('-') ? Number.parseInt(size, 10) : 1 - Number(size));

const sizeOf = (zeros: number): string => `${zeros}-0`;

const isDeep = ({ layer }: Closure, tables: Tables): boolean =>
  rowsIn(tables.layers, layer)[0]?.name === 'deep';

/** How far a size may be from the published ones: practice differs by one step everywhere. */
const step = 1;

/** The sizes of a procedure's stitches in the skin. */
const skinSizes = ({ closure = [] }: Procedure, tables: Tables): readonly Leaf<string>[] =>
  closure.flatMap((one) => (one.size?.value === undefined || isDeep(one, tables) ? [] : [one.size]));

const usualText = ({ thickest, thinnest }: SutureSizeRow): string =>
  thickest === thinnest ? sizeOf(thickest) : `${sizeOf(thickest)} to ${sizeOf(thinnest)}`;

function isOdd(size: string, { thickest, thinnest }: SutureSizeRow): boolean {
  const zeros = zerosOf(size);
  return zeros < thickest - step || zeros > thinnest + step;
}

function oddSizes(subject: Subject): readonly Report[] {
  const found: Report[] = [];
  const { note, tables } = subject;
  for (const procedure of note.procedures ?? []) {
    const sizes = skinSizes(procedure, tables);
    const base = sizes.length === 0 ? undefined : subject.siteOf(procedure)?.base;
    const row = tables.sutureSizes.find(({ groups }) => groups.some((group) => group === base?.group));
    if (base === undefined || row === undefined) continue;
    for (const size of sizes)
      if (isOdd(size.value ?? '', row))
        found.push({
          at: size,
          args: { size: size.text, site: base.name, usual: usualText(row) },
          rests: row,
        });
  }
  return found;
}

export const check: Check = {
  code: 'closure/odd-suture-size',
  severity: 'information',
  title: 'A stitch far thicker or thinner than is usual at the site',
  why: 'Thick stitches mark a face, thin ones break where the skin pulls; a size that is far off may be a slip. Only sizes more than one step outside all published ones are reported, and deep stitches are not.',
  sources: [
    { source: 'suture-chart', mark: 'Q' },
    { source: 'family-practice-guide', mark: 'Q' },
    { source: 'plastic-surgery-text', mark: 'Q' },
  ],
  messages: {
    main: '{size} is unusual in skin of the {site}; published: {usual}. Check the size.',
  },
  alternatives: { readAs: [] },
  sourcesDiffer: {
    how: 'Texts differ by a step: 3-0 to 5-0 in trunk and limbs, 3-0 to 5-0 in the foot. All of them count as usual, and one step beyond.',
    settings: ['severities'],
  },
  find: oddSizes,
};
