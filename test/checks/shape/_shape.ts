import { judge } from '../tester.ts';

export const before =
  'visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: left upper back\n    method: punch\n';
/** The codes found about how a note is written. */
export const own = (text: string): string[] =>
  judge(text)
    .findings.map(({ code }) => code)
    .filter((code) => /^(yaml|shape)\//.test(code));
