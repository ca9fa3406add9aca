import { added, longest, type Match, type Phrases } from '../phrase-index.ts';
import type { Token } from '../phrase-tokens.ts';
import { cueWords, type Does, type Kind } from './cues.ts';

/** What words do, as bits: several may be true of one word, and its place decides. */
export type Roles = number;

const bits = (
  'denies none ended tolerated doubt keeps past family relative subject tells except contrast asked verb auxiliary place ' +
  'reaction yes or and filler tail trail which'
).split(' ') as readonly Does[];

const bitOf = (does: Does): Roles => 1 << bits.indexOf(does);

/** Roles of words by their name, and three of what denies. */
export const role = Object.fromEntries(bits.map((does) => [does, bitOf(does)])) as Readonly<
  Record<Does, Roles>
>;
export const answers: Roles = 1 << bits.length;
export const orders: Roles = 1 << (bits.length + 1);
/** Of what says of which kind its names are: "denies allergies to". */
export const kindred: Roles = 1 << (bits.length + 3);
export const turns: Roles = 1 << (bits.length + 2);

export type CueIndex = Phrases<Roles>;

function indexOf(kind: Kind): CueIndex {
  const index: CueIndex = new Map();
  for (const cue of cueWords) {
    if (cue.kinds?.includes(kind) === false) continue;
    const roles =
      role[cue.does] |
      (cue.answers === true ? answers : 0) |
      (cue.kinds?.length === 1 && cue.does === 'denies' && cue.orders !== true ? kindred : 0) |
      (cue.orders === true ? orders : 0) |
      (cue.turns === true ? turns : 0);
    for (const word of cue.words.split('|')) add(index, word, roles);
  }
  return index;
}

/** Adds roles to those of a word. */
export function add(index: CueIndex, word: string, roles: Roles): void {
  const phrase = added(index, word, 0);
  phrase.value |= roles;
}

const made = new Map<Kind, CueIndex>();

/** The cues that count for a kind of danger; made when first asked. */
export function cuesOf(kind: Kind): CueIndex {
  let index = made.get(kind);
  if (index === undefined) made.set(kind, (index = indexOf(kind)));
  return index;
}

/** The longest cue that begins at a token. */
export const cueAt = (index: CueIndex, tokens: readonly Token[], at: number): Match<Roles> | undefined =>
  longest(index, tokens, at);
