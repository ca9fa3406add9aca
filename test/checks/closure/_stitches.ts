export const note = (site: string, rows: string): string =>
  `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: ${site}\n    ${rows.split('; ').join('\n    ')}\n`;
