import { isBare, type Node } from './tree.ts';

/** The keys of each map of a file, as the schema lists them. */
export interface KeyShape {
  readonly key: string;
  readonly prop: string;
  readonly description: string;
  readonly reads?: string;
  readonly words?: string;
  readonly map?: string;
  readonly list: boolean;
  readonly text?: string;
  /** The key of the map that holds what is said of a thing where a map's own key names it: `{latex: itching}`. */
  readonly named?: string;
  /** What a bare text may say in one line, of one map or several. */
  readonly line?: string;
  readonly open: boolean;
  /** Left out of the signature, since it is written after signing. */
  readonly unsigned?: true;
  readonly aliases: readonly string[];
}

export interface MapShape {
  /** What a person calls such a map: procedure, allergy. */
  readonly title: string;
  readonly required: readonly string[];
  readonly keys: readonly KeyShape[];
}

export type Shapes = Readonly<Record<string, MapShape>>;

/** A map's keys by every spelling that is accepted, canonical or alias. */
export interface KeyIndex {
  readonly shape: MapShape;
  readonly byName: ReadonlyMap<string, KeyShape>;
}

/** Looks the shapes up through Maps, so that a key such as `constructor` finds nothing. */
export function indexShapes(shapes: Shapes): ReadonlyMap<string, KeyIndex> {
  return new Map(
    Object.entries(shapes).map(([name, shape]) => [
      name,
      {
        shape,
        byName: new Map(
          shape.keys.flatMap((key) => [key.key, ...key.aliases].map((spelling) => [spelling, key])),
        ),
      },
    ]),
  );
}

/** Whether a list without items, or a map without keys that needs none, means a value: it records nothing. */
export const isHollow = (node: Node, { map = '' }: KeyShape, index: ReadonlyMap<string, KeyIndex>): boolean =>
  isBare(node) && (node.kind === 'list' || (index.get(map)?.shape.required ?? []).length === 0);
