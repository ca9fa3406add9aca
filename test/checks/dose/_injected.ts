/** A note with one lesion for each entry of injected drugs; `more` are keys of the patient or of the note. */
export const scars = (patient: string, ...injected: readonly string[]): string =>
  `visit: 2026-03-02\npatient: {id: C-1, born: 1980-01-01${patient}}\nprocedures:\n${injected
    .map((entry) => `  - site: left shoulder\n    method: injection\n    injected: ${entry}\n`)
    .join('')}`;

export const tac = (strength: string, volume: string, more = ''): string =>
  `{drug: triamcinolone, concentration: ${strength}, volume: ${volume}${more}}`;
