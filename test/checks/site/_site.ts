export const one = (site: string, more = ''): string =>
  `visit: 2026-03-02\nprocedures:\n  - site: ${site}\n    method: punch\n${more}`;
