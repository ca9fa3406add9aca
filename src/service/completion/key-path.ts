import type { KeyIndex, KeyShape } from '../../note/tree/shape.ts';
import type { RowToken } from './lines-above.ts';

export type Shapes = ReadonlyMap<string, KeyIndex>;

/** Where a path of keys leads. */
export interface Followed {
  readonly path: readonly string[];
  /** The map that holds the last key. */
  readonly map: KeyIndex | undefined;
  /** The last key, undefined at the root or where a key is unknown. */
  readonly key: KeyShape | undefined;
  /** The map that the last key opens; the root where the path is empty. */
  readonly inner: KeyIndex | undefined;
}

/** Follows keys from the root; each may be written in any accepted spelling. */
export function follow(keys: readonly string[], shapes: Shapes, root: string): Followed {
  let followed: Followed = { path: [], map: undefined, key: undefined, inner: shapes.get(root) };
  for (const typed of keys) {
    const key = followed.inner?.byName.get(typed);
    if (key === undefined)
      return { path: [...followed.path, typed], map: followed.inner, key: undefined, inner: undefined };
    followed = {
      path: [...followed.path, key.key],
      map: followed.inner,
      key,
      inner: key.map === undefined ? undefined : shapes.get(key.map),
    };
  }
  return followed;
}

export const keysOf = (tokens: readonly RowToken[]): readonly string[] =>
  tokens.flatMap(({ kind, key }) => (kind === 'key' ? [key] : []));
