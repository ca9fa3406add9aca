import { createTwoFilesPatch, FILE_HEADERS_ONLY } from 'diff';
import { applyEdits } from '../../note/tree/edit.ts';
import { plain } from '../../documents/one-line.ts';
import { analyse, fixAll } from '../../service/index.ts';
import type { Fixer } from './fix-notes.ts';

/** Fixes what is surely misspelled in a note, by the same rules as the editor. */
export const fixer: Fixer = {
  fixed(text, context) {
    const analysis = analyse(text, context);
    if (analysis.note?.keys.has('signed') === true) return 'signed';
    return { text: applyEdits(text, fixAll(analysis)) };
  },
  difference: (path, before, after) =>
    shownSafely(
      createTwoFilesPatch(`a/${path}`, `b/${path}`, before, after, undefined, undefined, {
        headerOptions: FILE_HEADERS_ONLY,
      }),
    ),
};

/** A patch in which nothing can command a terminal; tabs and line ends stay, since a patch needs them. */
const shownSafely = (patch: string): string =>
  patch
    .split(/([\t\r\n]+)/)
    .map((part, at) => (at % 2 === 0 ? plain(part) : part))
    .join('');
