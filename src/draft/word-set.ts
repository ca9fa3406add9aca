/** The words of a list that is written with spaces. */
export const wordSet = (words: string): ReadonlySet<string> => new Set(words.split(' '));
