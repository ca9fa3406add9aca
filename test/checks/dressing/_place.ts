export const note = (site: string, dressing: string, rows = 'method: shave'): string =>
  `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: ${site}\n    ${rows}\n    dressing: ${dressing}\n`;
