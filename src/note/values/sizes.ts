import type { Problem } from '../tree/finding.ts';
import { clean } from './format.ts';
import { readQuantity } from './quantity.ts';
import {
  longestRead,
  noProblems,
  part,
  problemAt,
  trimmed,
  unread,
  type Reading,
  type Stretch,
} from './reading.ts';
import type { Dimensions, Quantity } from './values.ts';

const usualDimensions =
  /^((?:0|[1-9]\d{0,3})(?:\.\d{1,4})?)(?: ?[x×] ?((?:0|[1-9]\d{0,3})(?:\.\d{1,4})?))?(?: ?[x×] ?((?:0|[1-9]\d{0,3})(?:\.\d{1,4})?))? ?(mm|cm)$/;
const largestUsual = 300;

/** Reads one to three lengths, in mm: `4 mm`, `9 x 8 mm`, `0.9 cm x 8 mm`. A unit also counts for the numbers before it. */
export function readDimensions(text: string): Reading<Dimensions> {
  const usual = usualDimensions.exec(text);
  if (usual) {
    const inCm = usual[4] === 'cm';
    const mm = [usual[1], usual[2], usual[3]].flatMap((digits) =>
      digits === undefined ? [] : [inCm ? Number(`${digits}e1`) : Number(digits)],
    );
    if (mm.every((one) => one > 0 && one <= largestUsual)) return { value: { mm }, problems: noProblems };
  }
  return readSides(text);
}

function readSides(text: string): Reading<Dimensions> {
  const typed = trimmed(text);
  const across = /\s{0,9}(?:in diameter|diameter|across)$/i.exec(typed.typed.slice(0, longestRead));
  const sides = sidesOf(part(typed, 0, across?.index ?? typed.typed.length));
  if (sides === undefined) return unread(unreadable(typed));
  const units = sides.map(({ typed: side }) => /[^\d\s.,][^]*$/.exec(side)?.[0]);
  const known = units.find((unit) => unit !== undefined);
  if (known === undefined) return unread(unitMissing(typed));
  const readings = sides.map((side, at) =>
    readSide(
      side,
      units[at] === undefined ? (units.slice(at).find((unit) => unit !== undefined) ?? known) : '',
    ),
  );
  const mm = readings.map(({ value }) => value?.amount);
  const problems = readings.flatMap((reading) => reading.problems);
  if (mm.includes(0)) return unread(problemAt(typed, 'quantity/not-positive', { form: 'zero' }));
  return { value: mm.every((one) => one !== undefined) ? { mm } : undefined, problems };
}

/** The stretches between the signs of multiplication; undefined where there are none or more than three. */
function sidesOf(typed: Stretch): readonly Stretch[] | undefined {
  if (typed.typed.length > longestRead) return undefined;
  const sides: Stretch[] = [];
  let from = 0;
  for (const match of typed.typed.matchAll(/\s*(?:[x×*]|\bby\b)\s*(?=[\d.])/gi)) {
    sides.push(part(typed, from, match.index));
    from = match.index + match[0].length;
  }
  sides.push(part(typed, from));
  return sides.length <= 3 && sides.every((side) => side.typed !== '') ? sides : undefined;
}

/** One side; `unit` is that of another side where it has none of its own. */
function readSide(side: Stretch, unit: string): Reading<Quantity> {
  const { value, problems } = readQuantity(unit === '' ? side.typed : `${side.typed} ${unit}`, 'length');
  const end = side.from + side.typed.length;
  return {
    value,
    problems: problems.flatMap((problem) => {
      const start = problem.at.start + side.from;
      // What is wrong with a borrowed unit is reported where it was typed.
      return start >= end
        ? []
        : [{ ...problem, at: { start, end: Math.min(problem.at.end + side.from, end) } }];
    }),
  };
}

/** Reads an area in cm2, also as two sides: `20 cm2`, `5 x 4 cm`. */
export function readArea(text: string): Reading<Quantity> {
  if (!/[\dm]\s?(?:[x×*]|by)\s?[\d.]/i.test(text.slice(0, longestRead))) return readQuantity(text, 'area');
  const { value, problems } = readDimensions(text);
  if (value === undefined) return { value, problems };
  const [first = 0, second = 0, third] = value.mm;
  if (third !== undefined)
    return unread(
      problemAt(trimmed(text), 'quantity/unreadable', {
        args: { wanted: 'an area', example: '20 cm2 or 5 x 4 cm' },
      }),
    );
  const amount = clean((first * second) / 100);
  return { value: { amount, unit: 'cm2', typedAmount: amount, typedUnit: 'cm2' }, problems };
}

/** USP sizes are zeros (4-0 is 0000) down to 12-0, or whole numbers up to 7. */
const finest = 12;
const coarsest = 7;

/** Reads a suture size in the form 4-0; 0 and whole numbers mean themselves. */
export function readSutureSize(text: string): Reading<string> {
  const typed = trimmed(text);
  const match = /^#?(\d{1,2})(?:(?:\s?[-–/]\s?)0)?$/.exec(typed.typed);
  if (match) {
    const number = Number(match[1]);
    const zeros = typed.typed.length > match[1]!.length + (typed.typed.startsWith('#') ? 1 : 0);
    if (zeros && number >= 1 && number <= finest)
      return { value: number === 1 ? '0' : `${number}-0`, problems: noProblems };
    if (!zeros && number <= coarsest && (match[1] === '0' || !match[1]!.startsWith('0')))
      return { value: String(number), problems: noProblems };
  }
  if (/^0{2,9}$/.test(typed.typed)) return { value: `${typed.typed.length}-0`, problems: noProblems };
  return unread(unreadableSize(typed));
}

function unreadableSize(typed: Stretch): Problem {
  const meant = /^([1-9]|1[0-2])\s?[-.,–/]?\s?[0oO]$/.exec(typed.typed)?.[1];
  return problemAt(typed, 'quantity/unreadable', {
    args: { wanted: 'a suture size', example: '4-0' },
    instead: meant === undefined ? [] : [`${meant}-0`],
    // 4.0 is also a metric size, which is much thicker.
    ...(/[oO]$/.test(typed.typed) ? { sure: meant !== undefined } : { adds: true }),
  });
}

function unitMissing(typed: Stretch): Problem {
  return problemAt(typed, 'quantity/unit-missing', {
    args: { units: 'mm or cm' },
    instead: [`${typed.typed} mm`, `${typed.typed} cm`],
    adds: true,
  });
}

const unreadable = (typed: Stretch): Problem =>
  problemAt(typed, 'quantity/unreadable', {
    form: 'length',
    args: { wanted: 'a size', example: '4 mm or 9 x 8 mm' },
  });
