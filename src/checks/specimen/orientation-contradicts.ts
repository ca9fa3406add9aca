import type { Report } from '../../note/tree/finding.ts';
import type { Leaf } from '../../note/tree/leaf.ts';
import {
  isOpposite,
  readOrientation,
  type MarginPlace,
  type TissueMark,
} from '../../note/words/orientation.ts';
import { within } from '../../note/tree/tree.ts';
import type { Check } from '../check.ts';
import { format } from '../sources.ts';
import { sentSpecimens } from './_sent.ts';

type Words = Leaf<string>;

const report = (leaf: Words, form: string, first: MarginPlace, second: MarginPlace): Report => ({
  at: within(leaf.node, second.from, second.to),
  form,
  args: { first: textOf(leaf, first), second: textOf(leaf, second) },
  related: [{ ...within(leaf.node, first.from, first.to), form: 'first', args: {} }],
});

const textOf = (leaf: Words, { from, to }: MarginPlace): string => (leaf.value ?? '').slice(from, to);

/** Hours that no clock has. */
function noSuchHour(leaf: Words, places: readonly MarginPlace[]): Report | undefined {
  const place = places.find(({ hour }) => hour !== undefined && (hour < 1 || hour > 12));
  return (
    place && {
      at: within(leaf.node, place.from, place.to),
      form: 'hour',
      args: { hour: textOf(leaf, place) },
    }
  );
}

/** One mark, or two that look alike, at places that are opposite each other. */
function alike(leaf: Words, marks: readonly TissueMark[]): Report | undefined {
  const byLook = new Map<string, MarginPlace[]>();
  for (const { kind, which, places } of marks) {
    if (kind === undefined) continue;
    const look = `${which} ${kind}`;
    const earlier = byLook.get(look) ?? [];
    for (const place of places) {
      const first = earlier.find((one) => isOpposite(one, place));
      if (first !== undefined) return report(leaf, 'alike', first, place);
      earlier.push(place);
    }
    byLook.set(look, earlier);
  }
  return undefined;
}

/** An hour with the direction that is named beside it. */
interface Pair {
  readonly hour: MarginPlace;
  readonly direction: MarginPlace;
}

const pairsOf = (marks: readonly TissueMark[]): readonly Pair[] =>
  marks.flatMap(({ places }) => {
    const hours = places.filter(({ hour }) => hour !== undefined);
    const directions = places.filter(({ direction }) => direction !== undefined);
    const [hour] = hours;
    const [direction] = directions;
    return hours.length === 1 && hour && direction ? [{ hour, direction }] : [];
  });

const byCustom: ReadonlyMap<number, string> = new Map([
  [12, 'inferior'],
  [6, 'superior'],
]);

/** An hour at which by custom the opposite margin is, unless the words define it so. */
function againstCustom(leaf: Words, pairs: readonly Pair[]): Report | undefined {
  const pair = pairs.find(
    ({ hour, direction }) =>
      byCustom.get(hour.hour ?? 0) === direction.direction && !hour.defined && !direction.defined,
  );
  return pair && report(leaf, 'custom', pair.hour, pair.direction);
}

/** One hour with two opposite directions, or one direction at two opposite hours. */
function twoWays(leaf: Words, pairs: readonly Pair[]): Report | undefined {
  for (const [at, one] of pairs.entries())
    for (const other of pairs.slice(at + 1)) {
      const sameHour = one.hour.hour === other.hour.hour;
      const sameWay = one.direction.direction === other.direction.direction;
      if (sameHour && isOpposite(one.direction, other.direction))
        return report(leaf, 'main', one.direction, other.direction);
      if (sameWay && isOpposite(one.hour, other.hour)) return report(leaf, 'main', one.hour, other.hour);
    }
  return undefined;
}

function contradictionIn(leaf: Words): Report | undefined {
  if (leaf.value === undefined) return undefined;
  const { marks, unoriented } = readOrientation(leaf.value);
  const places = marks.flatMap((mark) => mark.places);
  if (unoriented !== undefined && places.length > 0)
    return { at: within(leaf.node, unoriented.from, unoriented.to), form: 'unoriented' };
  const pairs = pairsOf(marks);
  return noSuchHour(leaf, places) ?? alike(leaf, marks) ?? twoWays(leaf, pairs) ?? againstCustom(leaf, pairs);
}

export const check: Check = {
  code: 'specimen/orientation-contradicts',
  severity: 'warning',
  title: 'Words on the orientation of the tissue that contradict each other',
  why: 'The pathologist names margins by the mark. Where its place is given in two ways, an involved margin is looked for on the wrong side. Twelve o’clock is the superior margin by custom; any other use is defined: `12 o’clock = caudal`.',
  sources: [{ source: 'orientation-note', mark: 'Q' }, { source: 'orientation-custom', mark: 'Q2' }, format],
  messages: {
    main: 'One place of the margin is given in two ways: `{first}` and `{second}`. Look at the tissue or ask, and correct one.',
    alike:
      'The same kind of mark is at `{first}` and at `{second}`, which are opposite, so nobody would notice if the tissue were flipped. Write what tells the marks apart, or correct one place.',
    custom:
      '`{first}` is the opposite margin by custom, and the words say `{second}`. Ask which it is; if it is intended, define it: `{first} = {second}`.',
    hour: '`{hour}` is not an hour of a clock. Write 1 to 12.',
    unoriented:
      'The words say that the tissue is not oriented, and name a place of its margin. Write which it is.',
    first: 'the other place',
  },
  find(subject) {
    const found: Report[] = [];
    for (const { specimen } of sentSpecimens(subject)) {
      const contradiction = specimen.orientation && contradictionIn(specimen.orientation);
      if (contradiction !== undefined) found.push(contradiction);
    }
    return found;
  },
};
