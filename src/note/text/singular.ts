/** A word without a plural `s`. */
export const singular = (word: string): string => (word.endsWith('s') ? word.slice(0, -1) : word);
