export const note = (lines: readonly string[], patient = 'id: C-1, implants: none'): string =>
  `visit: 2026-03-02\npatient: {${patient}}\nprocedures:\n${lines.map((line, at) => `  ${at === 0 ? '- ' : '  '}${line}\n`).join('')}`;
