import type { Note } from '../../note/generated/types.ts';
import type { Language } from '../../note/words/language.ts';
import type { Tables } from '../../practice/tables.ts';
import { said } from '../from-note.ts';
import { svgOf, type Picture, type PictureOptions } from './picture.ts';

/** What of a note is placed, and in whose words. */
export interface PlaceOptions extends PictureOptions {
  /** Of the words around the figure; the sites are the note's own. */
  readonly language?: Language;
  /** Indices of the procedures that are shown, from 0; all where nothing is said. */
  readonly only?: readonly number[];
  /** Whether the genital and perianal area is drawn. */
  readonly intimate?: boolean;
}

/** Where on the body the procedures of a note are. Undefined where the note has none. */
export function placePicture(
  note: Note,
  _tables: Tables,
  { id = 'place', only, linked = false }: PlaceOptions = {},
): Picture | undefined {
  const shown = (note.procedures ?? []).flatMap(({ site }, index) =>
    only?.includes(index) === false ? [] : [{ index, site: said(site) }],
  );
  if (shown.length === 0) return undefined;
  const title = 'Where on the body';
  const notDrawn = shown.map(({ index, site }) => `${index + 1}. ${site ?? 'site not recorded'}: not drawn.`);
  const alternative = notDrawn.join(' ');
  return {
    title,
    alternative,
    svg: svgOf({ id, title, alternative, width: 480, height: 20, linked }, ''),
    table: {
      head: ['Number', 'Site'],
      rows: shown.map(({ index, site }) => [String(index + 1), site ?? '–']),
    },
    notDrawn,
  };
}
