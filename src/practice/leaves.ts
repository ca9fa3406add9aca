import type { Leaf } from '../note/tree/leaf.ts';

/** The text that a leaf holds; empty where it holds none, or `??`. */
export const textOf = (leaf: Leaf<string> | undefined): string => leaf?.value?.trim() ?? '';

/** The texts of a list, without those that are not yet known. */
export const textsOf = (leaves: readonly Leaf<string>[] | undefined): readonly string[] =>
  (leaves ?? []).map(textOf).filter((text) => text !== '');

/** Whether something is there that can't be read. */
export const isUnread = (leaf: Leaf<unknown> | undefined): boolean =>
  leaf !== undefined && leaf.value === undefined;

type Defined<T> = { [Key in keyof T]?: Exclude<T[Key], undefined> };

/** The properties that have a value. */
export function defined<T extends object>(properties: T): Defined<T> {
  const pairs = Object.entries(properties).filter(([, value]) => value !== undefined);
  return Object.fromEntries(pairs) as Defined<T>;
}
