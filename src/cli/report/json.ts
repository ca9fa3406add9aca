import { safeJson } from '../../documents/safe-json.ts';
import { doseJson } from '../../dose/json.ts';
import type { Checked, Reported } from '../notes/judge.ts';
import { ndjsonOf } from './ndjson.ts';
import { hasErrors, type Report } from './report.ts';

/** The findings and doses of files as one JSON text. Lines and characters count from 0. */
export function jsonReport(): Report {
  let first = true;
  return {
    begin: () => '{"wheal": 1, "files": [',
    entry: (checked) => ({ text: safeJson(entryOf(checked), 2), errors: hasErrors(checked) }),
    add({ text }) {
      const lead = first ? '\n' : ',\n';
      first = false;
      return `${lead}${text}`;
    },
    end: () => '\n]}\n',
  };
}

/** The same, a line for each file. */
export const ndjsonReport = (): Report => ({
  begin: () => '',
  entry: (checked) => ({
    text: ndjsonOf({}, { files: [entryOf(checked)] }),
    errors: hasErrors(checked),
  }),
  add: ({ text }) => text,
  end: () => '',
});

function entryOf({ path, kind, practice, findings, dose }: Checked): object {
  return {
    path,
    ...(kind === 'practice' ? { kind } : {}),
    ...(practice === undefined ? {} : { practice }),
    findings: findings.map(findingOf),
    dose: dose && doseJson(dose),
  };
}

function findingOf({
  code,
  severity,
  message,
  sources,
  citations,
  range,
  related,
  accepted,
}: Reported): unknown {
  return {
    code,
    severity,
    message,
    sources,
    citations,
    range,
    ...(related.length === 0 ? {} : { related }),
    ...(accepted === undefined ? {} : { accepted }),
  };
}
