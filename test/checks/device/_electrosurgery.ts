export const note = (implants: string, hemostasis: string, site = 'left upper back', more = ''): string =>
  `visit: 2026-03-02\npatient: {id: C-1, implants: ${implants}}\nprocedures:\n  - site: ${site}\n    method: shave\n    hemostasis: ${hemostasis}\n${more}`;
