import english from 'dictionary-en';
import spanish from 'dictionary-es';
import nspell from 'nspell';
import type { Language } from '../../src/note/words/language.ts';

const speller = ({ aff, dic }: typeof english): ReturnType<typeof nspell> =>
  nspell(Buffer.from(aff), Buffer.from(dic));

const dictionaries = { en: speller(english), es: speller(spanish) };

/** Right words that the dictionary does not list. */
const known: Readonly<Record<Language, ReadonlySet<string>>> = {
  en: new Set(['acetaminophen']),
  es: new Set([
    ...['petrolato', 'acetaminofén', 'ibuprofeno'],
    // Imperatives with a pronoun, as the spelling rules of the Academy write them.
    ...['cúbrala', 'manténgala'],
  ]),
};

/** The words of a text that a dictionary of its language does not know. */
export function misspelt(text: string, language: Language): readonly string[] {
  const words = text.replace(/\{\w+\}/g, ' ').match(/\p{L}[\p{L}’'-]*/gu) ?? [];
  return words
    .map((word) => word.replace(/^['’-]+|['’-]+$/g, '').replaceAll('’', "'"))
    .filter(
      (word) =>
        word.length > 1 && !known[language].has(word.toLowerCase()) && !dictionaries[language].correct(word),
    );
}
