export const note = (patient: string, visit = '2026-03-02'): string =>
  `visit: ${visit}\npatient: {id: C-1, ${patient}}\nprocedures: []\n`;
