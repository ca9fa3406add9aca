export const note = (rows: string): string =>
  `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: left upper back\n    ${rows.split('; ').join('\n    ')}\n`;
