/**
 * Whether to write colors: FORCE_COLOR wins over NO_COLOR, and without either a terminal decides.
 * @param isTerminal asked only where it matters
 */
export function wantsColor(
  environment: Readonly<Record<string, string | undefined>>,
  isTerminal: () => boolean,
): boolean {
  const { FORCE_COLOR: force = '', NO_COLOR: none = '', TERM: terminal } = environment;
  if (force !== '') return force !== '0' && force !== 'false';
  return none === '' && terminal !== 'dumb' && isTerminal();
}
