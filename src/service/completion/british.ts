/** The British spelling of words that completions write: keys and words of the tables. Both are accepted everywhere. */
const british: readonly (readonly [american: RegExp, british: string])[] = [
  [/\bhemostasis\b/g, 'haemostasis'],
  [/\banesthetic\b/g, 'anaesthetic'],
  [/\bepinephrine\b/g, 'adrenaline'],
  [/\baluminum\b/g, 'aluminium'],
];

/** A word in the spelling of the practice, where that spelling is accepted too. */
export function spelled(
  word: string,
  spelling: 'american' | 'british',
  isAccepted: (word: string) => boolean,
): string {
  if (spelling === 'american') return word;
  const written = british.reduce((text, [from, to]) => text.replace(from, to), word);
  return isAccepted(written) ? written : word;
}
