export const note = (method: string, line: string): string =>
  `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: left upper back\n    method: ${method}\n    ${line}\n`;
