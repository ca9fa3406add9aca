/** The languages that handouts are written in. */
export type Language = 'en' | 'es';

const names: ReadonlyMap<string, Language> = new Map([
  ['en', 'en'],
  ['eng', 'en'],
  ['english', 'en'],
  ['inglés', 'en'],
  ['ingles', 'en'],
  ['es', 'es'],
  ['spanish', 'es'],
  ['español', 'es'],
  ['espanol', 'es'],
]);

/** The language that a word of the note means: `es`, `Spanish`, `en-US`; undefined where there is no handout in it. */
export const languageOf = (text: string): Language | undefined =>
  names.get(
    text
      .trim()
      .toLowerCase()
      .replace(/[-_][a-z]{2}$/, ''),
  );

/** Whether one of the words of a text is a language of handouts: "English and Polish", "Spanish with interpreter". */
export const namesLanguage = (text: string): boolean =>
  text.split(/[\s,;/&+()]+/).some((word) => languageOf(word) !== undefined);
