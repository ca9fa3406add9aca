import { isStrange, legible, spotsOf, withoutUnseen, type Spot } from '../text/characters.ts';
import { largest } from '../text/files.ts';
import type { Problem } from '../tree/finding.ts';
import type { KeyNames } from '../tree/key-names.ts';
import type { Entry, MapNode, Node } from '../tree/tree.ts';
import { parseYaml, type Parsed } from './parse.ts';

/** The tree of a text, read through characters that are not what they seem. */
export interface ReadThrough extends Parsed {
  /** The same with every character as it was typed, for what must not be changed unseen. */
  readonly asTyped: MapNode | null;
}

const codes: Readonly<Record<Spot['kind'], Pick<Problem, 'code' | 'form'>>> = {
  direction: { code: 'yaml/unseen-character', form: 'direction' },
  invisible: { code: 'yaml/unseen-character' },
  letter: { code: 'yaml/look-alike' },
  space: { code: 'yaml/look-alike', form: 'space' },
  wide: { code: 'yaml/look-alike', form: 'wide' },
};

/** Parses a text as it is meant where it has characters that look like others, or that nobody sees. Never throws. */
export function parseThrough(text: string, keys: KeyNames): ReadThrough {
  if (text.length > largest || !isStrange(text)) {
    const parsed = parseYaml(text, keys);
    return { ...parsed, asTyped: parsed.root };
  }
  const { root, problems, damage } = parseYaml(legible(text), keys);
  const spots = spotsOf(text).map(problemOf);
  return {
    root: root && cleanMap(root),
    problems: spots.length === 0 ? problems : [...problems, ...spots],
    damage,
    asTyped: parseYaml(text, keys).root ?? root,
  };
}

const problemOf = ({ kind, start, end, read }: Spot): Problem => ({
  ...codes[kind],
  at: { start, end },
  args: { read },
  data: { text: read },
});

const cleanMap = (map: MapNode): MapNode => ({ ...map, entries: map.entries.map(cleanEntry) });

const cleanEntry = (entry: Entry): Entry => ({
  ...entry,
  key: withoutUnseen(entry.key),
  value: entry.value === null ? null : clean(entry.value),
});

function clean(node: Node): Node {
  if (node.kind === 'map') return cleanMap(node);
  if (node.kind === 'list') return { ...node, items: node.items.map(clean) };
  const text = withoutUnseen(node.text);
  return text === node.text ? node : { ...node, text, inner: -1 };
}
