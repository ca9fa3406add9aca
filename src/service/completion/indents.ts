/** A key with nothing after it, and the line that belongs to it: empty lines and comments tell nothing. */
const opened = /^( *)[\w-]+:[ \t]*(?:#.*)?(?:\r?\n[ \t]*(?:#.*)?)*\r?\n( *)(- )?(?=[^\s#-])/gm;

/** How many columns after a key what belongs to it begins: 0 for lists whose dashes are below their key. */
export interface Depths {
  readonly list: number;
  readonly map: number;
}

/** How a note, which may be half typed, writes its lists and maps, so that what is added looks like the rest; two columns where it does not tell yet. */
export function depthsOf(text: string): Depths {
  const ways = [...text.matchAll(opened)]
    .map(([, outer = '', inner = '', dash]) => ({
      by: inner.length - outer.length,
      isList: dash !== undefined,
    }))
    .filter(({ by, isList }) => by > 0 || (by === 0 && isList));
  const first = (wanted: boolean): number =>
    (ways.find(({ isList }) => isList === wanted) ?? ways.find(({ by }) => by > 0))?.by ?? 2;
  return { list: first(true), map: first(false) };
}
