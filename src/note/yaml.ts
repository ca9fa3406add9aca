import { isAlias, isMap, isScalar, isSeq, parseDocument, type Pair, type Scalar } from 'yaml';
import type { Problem } from './finding.ts';
import type { Entry, ListNode, MapNode, Node, TextNode } from './tree.ts';

/** The tree of a text, or null where the text holds nothing, with what was wrong with its YAML. */
export interface Parsed {
  readonly root: Node | null;
  readonly problems: readonly Problem[];
}

/** Every scalar stays the text that was typed; unique keys are ours to check, since the parser's own test is quadratic. */
const options = {
  prettyErrors: false,
  uniqueKeys: false,
  schema: 'failsafe',
  version: '1.2',
  logLevel: 'silent',
} as const;

/** Parses YAML 1.2 into our own tree. Never throws. */
export function parseYaml(text: string): Parsed {
  const document = parseDocument(text, options);
  const problems = document.errors.map((error): Problem => ({
    code: 'yaml/syntax',
    start: error.pos[0],
    end: error.pos[1],
    args: { detail: error.message },
  }));
  const root = document.contents === null ? null : nodeOf(document.contents, text);
  return { root, problems };
}

function nodeOf(node: unknown, source: string): Node {
  if (isMap(node)) return mapOf(node.items, node.flow === true, node.range, source);
  if (isSeq(node)) {
    const [start, end] = rangeOf(node.range);
    return {
      kind: 'list',
      start,
      end,
      flow: node.flow === true,
      items: node.items.map((item) => nodeOf(item, source)),
    } satisfies ListNode;
  }
  if (isScalar(node)) return textOf(node, source);
  const [start, end] = isAlias(node) ? rangeOf(node.range) : [0, 0];
  return { kind: 'text', start, end, text: source.slice(start, end), inner: start };
}

function mapOf(pairs: readonly Pair[], flow: boolean, range: unknown, source: string): MapNode {
  const [start, end] = rangeOf(range);
  const entries = pairs.map((pair): Entry => {
    const key = nodeOf(pair.key, source);
    const value = pair.value === null || pair.value === undefined ? null : nodeOf(pair.value, source);
    return {
      start: key.start,
      end: key.end,
      key: key.kind === 'text' ? key.text : source.slice(key.start, key.end),
      value: value !== null && value.kind === 'text' && value.start === value.end ? null : value,
    };
  });
  return { kind: 'map', start, end, flow, entries };
}

function textOf(scalar: Scalar, source: string): TextNode {
  const [start, end] = rangeOf(scalar.range);
  const text = typeof scalar.value === 'string' ? scalar.value : '';
  const at = scalar.type === 'QUOTE_DOUBLE' || scalar.type === 'QUOTE_SINGLE' ? start + 1 : start;
  return { kind: 'text', start, end, text, inner: source.startsWith(text, at) ? at : -1 };
}

function rangeOf(range: unknown): [number, number] {
  const [start, end] = (range ?? [0, 0]) as [number, number];
  return [start, end];
}
