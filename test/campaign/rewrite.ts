import { readNote } from '../../src/note/read.ts';
import type { Entry, Node } from '../../src/note/tree/tree.ts';
import type { Random } from './random.ts';

/** How a note is written; none of it changes what the note says. */
interface Style {
  readonly indent: number;
  readonly lineEnd: string;
  readonly random: Random;
  readonly shares: {
    readonly flow: number;
    readonly quotes: number;
    readonly quotedKeys: number;
    readonly mixedKeys: number;
    readonly comments: number;
    readonly emptyLines: number;
    readonly trailing: number;
    readonly unseen: number;
    readonly wide: number;
    readonly alike: number;
    readonly noBreak: number;
  };
}

const yes = (random: Random): number => (random.chance(0.3) ? 0.4 : 0);

/** A note written again from what it says: flow or block, quotes, order of keys, comments, line ends, look-alikes. */
export function rewritten(text: string, random: Random): string | undefined {
  const { root, sound } = readNote(text);
  if (root === null || !sound) return undefined;
  const style: Style = {
    indent: random.of([1, 2, 2, 4]),
    lineEnd: random.of(['\n', '\n', '\r\n', '\r', '\r\r\n']),
    random,
    shares: {
      flow: yes(random),
      quotes: yes(random),
      quotedKeys: yes(random),
      mixedKeys: yes(random),
      comments: yes(random),
      emptyLines: yes(random),
      trailing: yes(random),
      unseen: yes(random),
      wide: yes(random),
      alike: yes(random),
      noBreak: yes(random),
    },
  };
  const begin = random.of(['', '', '\uFEFF', '---\n', '# invented\n']);
  const lines = block(root, 0, style);
  return `${begin}${lines.join('\n')}\n`.replace(/\n/g, style.lineEnd);
}

const pad = (depth: number, { indent }: Style): string => ' '.repeat(depth * indent);

function block(node: Node, depth: number, style: Style): readonly string[] {
  const { random, shares } = style;
  if (node.kind === 'text') return [pad(depth, style) + scalar(node.text, style)];
  if (node.kind === 'list')
    return node.items.flatMap((item) => {
      if (item.kind !== 'map' || item.entries.length === 0 || random.chance(shares.flow))
        return [`${pad(depth, style)}- ${inFlow(item, style)}${end(style)}`];
      const inner = block(item, 0, style);
      const lead = `${pad(depth, style)}- `;
      return inner.map((line, at) => (at === 0 ? lead : ' '.repeat(lead.length)) + line);
    });
  const entries = random.chance(shares.mixedKeys) ? random.mixed(node.entries) : node.entries;
  return entries.flatMap((entry) => [...between(depth, style), ...entryLines(entry, depth, style)]);
}

function entryLines({ key, value }: Entry, depth: number, style: Style): readonly string[] {
  const lead = `${pad(depth, style)}${keyText(key, style)}:`;
  if (value === null) return [lead];
  const isFlow = value.kind === 'text' || isBare(value) || style.random.chance(style.shares.flow);
  return isFlow
    ? [`${lead} ${inFlow(value, style)}${end(style)}`]
    : [lead, ...block(value, depth + 1, style)];
}

const isBare = (node: Node): boolean =>
  (node.kind === 'list' && node.items.length === 0) || (node.kind === 'map' && node.entries.length === 0);

function inFlow(node: Node, style: Style): string {
  if (node.kind === 'text') return scalar(node.text, style);
  if (node.kind === 'list') return `[${node.items.map((item) => inFlow(item, style)).join(', ')}]`;
  const pairs = node.entries.map(
    ({ key, value }) => `${keyText(key, style)}: ${value === null ? '""' : inFlow(value, style)}`,
  );
  return `{${pairs.join(', ')}}`;
}

const keyText = (key: string, { random, shares }: Style): string =>
  random.chance(shares.quotedKeys) ? JSON.stringify(key) : key;

const plain = /^[A-Za-z0-9][\w ./%+-]*[\w%]$/;

function scalar(text: string, style: Style): string {
  const { random, shares } = style;
  if (!plain.test(text) || random.chance(shares.quotes))
    return random.chance(0.5) || /[\n\\]/.test(text) ? JSON.stringify(text) : `'${text.replace(/'/g, "''")}'`;
  return disguised(text, style);
}

/** A word that shows as it did, with other characters. */
function disguised(text: string, { random, shares }: Style): string {
  let shown = text;
  if (random.chance(shares.unseen))
    shown = shown.replace(/[a-z](?=[a-z])/, (letter) => letter + random.of(['\u00ad', '\u200b', '\u2060']));
  if (random.chance(shares.wide))
    shown = shown.replace(/\d/, (one) => String.fromCharCode(one.charCodeAt(0) + 0xfee0));
  if (random.chance(shares.alike) && /[a-z]{4}/.test(shown))
    shown = shown.replace(/[aeo]/, (letter) => 'аео'['aeo'.indexOf(letter)]!);
  if (random.chance(shares.noBreak)) shown = shown.replace(/ /, '\u00a0');
  return shown;
}

const end = ({ random, shares }: Style): string =>
  (random.chance(shares.trailing) ? '  ' : '') + (random.chance(shares.comments) ? '  # a remark' : '');

function between(depth: number, style: Style): readonly string[] {
  const { random, shares } = style;
  return [
    ...(random.chance(shares.emptyLines) ? [''] : []),
    ...(random.chance(shares.comments) ? [`${pad(depth, style)}# a remark`] : []),
  ];
}
