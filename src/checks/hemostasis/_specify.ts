import type { Finding, Fix } from '../../note/tree/finding.ts';

/** The two things that a word such as "cautery" may mean; which of them is for the clinician to say. */
export const specify = ({ start, end }: Finding): readonly Fix[] =>
  ['heat cautery', 'electrosurgery'].map((text) => ({
    title: `correct the record: ${text}`,
    kind: 'record',
    sure: false,
    edits: [{ start, end, text }],
  }));
