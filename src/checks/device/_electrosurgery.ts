import type { Leaf } from '../../note/tree/leaf.ts';

export const gone = /\b(?:removed|explanted|taken out)\b/i;

/** "Removed, leads in place", "not removed", "removed, new one placed": something is still there. */
export const stillThere =
  /\b(?:not|never|to be|will be|planned|scheduled|new|replaced|reimplanted|leads?|wires?)\b|\b(?:removed|explanted|taken out)\b.*\b(?:placed|implanted|inserted|now)\b/i;

export const isGone = ({ text }: Leaf<string>): boolean => gone.test(text) && !stillThere.test(text);
