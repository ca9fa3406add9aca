import { careSentences } from './care.ts';
import { doneSentences } from './done.ts';
import type { Sentence } from './sentence.ts';
import { watchSentences } from './watch.ts';

export type { Sentence };

/** Every sentence of the handout, by its name. */
export const catalogue: ReadonlyMap<string, Sentence> = new Map(
  [...doneSentences, ...careSentences, ...watchSentences].map((sentence) => [sentence.id, sentence]),
);

/** What a sentence has filled in: the names in its braces. */
export const argumentsIn = (text: string): ReadonlySet<string> =>
  new Set(Array.from(text.matchAll(/\{(\w+)\}/g), ([, name]) => name ?? ''));
