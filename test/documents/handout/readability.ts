/** Published formulas for how easy a text is to read, and the counting that they need. */

interface Counts {
  readonly sentences: number;
  readonly words: number;
  readonly syllables: number;
}

/** Sentences end at a full stop, question mark or exclamation mark, not at a colon; every text ends one. */
function counted(texts: readonly string[], syllablesOf: (word: string) => number): Counts {
  const sentences = texts
    .flatMap((text) => text.split(/[.!?]+(?=\s|$)/))
    .filter((one) => /[\p{L}\d]/u.test(one));
  const words = sentences.flatMap((one) => one.match(/[\p{L}\d][\p{L}\d.'’/-]*/gu) ?? []);
  return {
    sentences: sentences.length,
    words: words.length,
    syllables: words.reduce((sum, word) => sum + (/\d/.test(word) ? 1 : syllablesOf(word)), 0),
  };
}

/** Groups of vowels, less a silent e and the silent e of -ed: the usual rule of thumb. */
export function englishSyllables(word: string): number {
  const plain = word.toLowerCase().replace(/[^a-z]/g, '');
  const heard = plain.replace(/(?:[^laeiouy]es|[^tdaeiouy]ed|[^laeiouy]e)$/, (end) => end[0] ?? '');
  return Math.max(1, (heard.match(/[aeiouy]+/g) ?? []).length);
}

/** Nuclei: strong vowels be alone, a weak one joins its neighbor unless it bears an accent; u is silent in que, gui. */
export function spanishSyllables(word: string): number {
  const plain = word
    .toLowerCase()
    .replace(/([qg])u(?=[eiéí])/g, '$1')
    .replace(/y$/, 'i')
    .replace(/y/g, 'j');
  return Math.max(1, (plain.match(/[iuü]?[aeoáéó](?:[iuü](?![aeoáéó]))?|[íú]|[iuü]+/g) ?? []).length);
}

/** Kincaid et al. 1975, Navy research report 8-75: the US school grade; age is about five more. */
export function fleschKincaidGrade(texts: readonly string[]): number {
  const { sentences, words, syllables } = counted(texts, englishSyllables);
  return 0.39 * (words / sentences) + 11.8 * (syllables / words) - 15.59;
}

/** Szigriszt-Pazos 1993: perspicuity; Barrio-Cantalejo 2008 (INFLESZ) calls 65 to 80 quite easy, 55 to 65 normal. */
export function szigrisztPazos(texts: readonly string[]): number {
  const { sentences, words, syllables } = counted(texts, spanishSyllables);
  return 206.835 - 62.3 * (syllables / words) - words / sentences;
}

/** Fernández Huerta 1959: 70 to 80 is for the sixth grade, at eleven to twelve years. */
export function fernandezHuerta(texts: readonly string[]): number {
  const { sentences, words, syllables } = counted(texts, spanishSyllables);
  return 206.84 - 60 * (syllables / words) - 1.02 * (words / sentences);
}
