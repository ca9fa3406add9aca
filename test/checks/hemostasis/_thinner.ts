export const note = (
  medicine: string,
  hemostasis: string,
  dressing: string,
  more = 'method: shave',
): string =>
  `visit: 2026-03-02\npatient: {id: C-1, medications: ${medicine}}\nprocedures:\n  - site: left upper back\n    ${more}\n    hemostasis: ${hemostasis}\n    dressing: ${dressing}\n`;
