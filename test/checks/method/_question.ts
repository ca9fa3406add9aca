export const note = (site: string, ...lines: readonly string[]): string =>
  `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: ${site}\n${lines.map((line) => `    ${line}\n`).join('')}`;
