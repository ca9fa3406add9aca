import { nearestKey } from '../text/nearest.ts';
import type { KeyIndex, KeyShape } from './shape.ts';
import type { Entry, MapNode, TextNode } from './tree.ts';

/** Words that ask for a thing rather than name one: a key that is none of the format's, and no shorthand. */
const asking: ReadonlySet<string> = new Set(
  (
    'substance allergen name drug medication medicine agent type device implant item allergy what thing product ' +
    'material location place site side note notes severity date year since status comment comments detail details ' +
    'reactions symptom symptoms onset manifestation model brand manufacturer serial id description text remark remarks'
  ).split(' '),
);

/**
 * Whether a map has none of its keys and names things by its own instead: `{latex: itching, penicillin: hives}` is one
 * entry for each.
 */
export const isShorthand = (node: MapNode, { named }: KeyShape, index: KeyIndex | undefined): boolean =>
  named !== undefined &&
  index !== undefined &&
  node.entries.length > 0 &&
  node.entries.every(
    ({ key }) =>
      !index.byName.has(key) &&
      !asking.has(key.toLowerCase()) &&
      (isShort(key) || nearestKey(key, index.byName)?.meant !== true),
  );

/** An abbreviation in capitals is no slip of `to`. */
const isShort = (key: string): boolean => key.length > 2 && key.length < 5 && key === key.toUpperCase();

/** The key of an entry as a text. */
export const keyText = ({ key, start, end }: Entry): TextNode => ({
  kind: 'text',
  text: key,
  start,
  end,
  inner: end - start === key.length ? start : -1,
});

/** What is said of a thing that a key names, as one text; undefined where nothing is, or it is a map. */
export function valueText({ value }: Entry): TextNode | undefined {
  if (value?.kind === 'text') return value;
  if (value?.kind !== 'list') return undefined;
  const { start, end, items } = value;
  const text = items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])).join(', ');
  return { kind: 'text', text, start, end, inner: -1 };
}
