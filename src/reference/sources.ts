/** What each source key stands for, as it is cited. */
export const sources: Readonly<Record<string, string>> = {
  'us-label-lidocaine':
    'US prescribing information, lidocaine hydrochloride injection, maximum recommended dosages (openFDA label record)',
  format: 'Wheal note format',
  common: 'common practice, no source',
};

/** The citation of a source key. @throws Error for a key that the table does not have */
export function citation(key: string): string {
  const text = sources[key];
  if (text === undefined) throw new Error(`no source is called ${key}`);
  return text;
}
