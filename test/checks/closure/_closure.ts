export const note = (...lines: readonly string[]): string =>
  `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: left upper back\n${lines.map((line) => `    ${line}\n`).join('')}`;
