export const note = (allergies: string, line: string): string =>
  `visit: 2026-03-02\npatient: {id: C-1, allergies: [${allergies}]}\nprocedures:\n  - site: left cheek\n    ${line}\n`;
