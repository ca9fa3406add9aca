import type { KeyIndex, KeyShape } from '../note/shape.ts';
import type { MapNode, Node } from '../note/tree.ts';

type Index = ReadonlyMap<string, KeyIndex>;

/**
 * Whether a map surely has the form that the schema wants and nothing in it waits, so that neither has to be looked
 * for. Where it says no, the validator decides: most notes have nothing wrong with their form, and to hear that from
 * the validator costs a copy of the whole.
 */
export function fits(node: MapNode, name: string, index: Index): boolean {
  const known = index.get(name);
  if (known === undefined) return false;
  for (const { key: typed, value } of node.entries) {
    const key = known.byName.get(typed);
    if (key === undefined || value === null || !valueFits(value, key, index)) return false;
  }
  return known.shape.required.every((key) =>
    node.entries.some((entry) => known.byName.get(entry.key)?.key === key),
  );
}

function valueFits(node: Node, key: KeyShape, index: Index): boolean {
  if (node.kind !== 'list') return itemFits(node, key, index);
  if (!key.list) return false;
  for (const item of node.items) if (item.kind === 'list' || !itemFits(item, key, index)) return false;
  return true;
}

function itemFits(node: Node, key: KeyShape, index: Index): boolean {
  if (node.kind === 'text')
    return node.text !== '' && node.text !== '??' && (key.map === undefined || key.text !== undefined);
  return node.kind === 'map' && !key.open && key.map !== undefined && fits(node, key.map, index);
}
