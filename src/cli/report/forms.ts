import { jsonReport, ndjsonReport } from './json.ts';
import type { Look, Report } from './report.ts';
import { sarifReport } from './sarif.ts';
import { textReport } from './text.ts';

export type Form = 'text' | 'json' | 'ndjson' | 'sarif';

/** The forms of what a check reports, the usual one first. */
export const reportForms: Readonly<Record<Form, (look: Look) => Report>> = {
  text: textReport,
  json: jsonReport,
  ndjson: ndjsonReport,
  sarif: sarifReport,
};
