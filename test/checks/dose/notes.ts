/** A note of one procedure; `patient` and the injections are typed as flow maps without their braces. */
export function note(
  injections: readonly string[],
  patient = 'id: C-1, born: 1961-08-09, weight: 62 kg',
  rest = '',
): string {
  const rows = injections.map((one) => `      - {${one}}\n`).join('');
  return `visit: 2026-03-02\npatient: {${patient}}\nprocedures:\n  - site: left upper back\n    method: punch\n    anesthetic:\n${rows}${rest}`;
}

export const lidocaine = (volume: string): string => `agent: lidocaine, concentration: 1%, volume: ${volume}`;
export const withEpinephrine = (volume: string, ratio = '"1:100,000"'): string =>
  `agent: lidocaine, concentration: 1%, epinephrine: ${ratio}, volume: ${volume}`;

export const cream = (rest: string, patient = 'id: C-1, age: 7 months, weight: 8 kg'): string =>
  note([`agent: lidocaine-prilocaine cream, ${rest}`], patient);
