import { safeJson } from '../../documents/safe-json.ts';
import { isAbsolute, sep } from 'node:path';
import { pathToFileURL } from 'node:url';
import { catalogue } from '../../checks/index.ts';
import { unreadable } from '../files.ts';
import type { LineRange, Reported } from '../judge.ts';
import type { Severity } from '../../note/tree/finding.ts';
import { version } from '../version.ts';
import type { Report } from './report.ts';

const levels: Readonly<Record<Severity, 'error' | 'warning' | 'note'>> = {
  error: 'error',
  warning: 'warning',
  information: 'note',
  hint: 'note',
};

/**
 * The rules: the whole catalogue, and the one for files that can't be read. SARIF wants an absolute address in
 * `helpUri`, which the pages don't have, so a rule's help names its page in the project instead.
 */
const rulesOf = (): readonly { readonly id: string }[] => [
  ...catalogue.map(({ code, severity, title, why }) => ({
    id: code,
    shortDescription: { text: title },
    fullDescription: { text: why },
    help: { text: `${why} See src/checks/${code}.md.` },
    defaultConfiguration: { level: levels[severity] },
  })),
  {
    id: unreadable,
    shortDescription: { text: "A file that can't be read" },
    fullDescription: { text: 'Nothing in such a file was checked.' },
    help: { text: 'Nothing in such a file was checked.' },
    defaultConfiguration: { level: levels.error },
  },
];

/** The findings of files as SARIF 2.1.0. Lines and columns count from 1, columns in UTF-16 units. */
export function sarifReport(): Report {
  const rules = rulesOf();
  const indexes: ReadonlyMap<string, number> = new Map(rules.map(({ id }, index) => [id, index]));
  const log = {
    $schema: 'https://json.schemastore.org/sarif-2.1.0.json',
    version: '2.1.0',
    runs: [{ tool: { driver: { name: 'wheal', version, rules } }, columnKind: 'utf16CodeUnits' }],
  };
  let first = true;
  return {
    // The results are written one by one into the run that is left open here.
    begin: () => `${JSON.stringify(log).slice(0, -'}]}'.length)},"results":[`,
    file: (checked) =>
      checked.findings
        .map((finding) => {
          const lead = first ? '\n' : ',\n';
          first = false;
          return `${lead}${safeJson(resultOf(checked.path, finding, indexes))}`;
        })
        .join(''),
    end: () => '\n]}]}\n',
  };
}

function resultOf(
  path: string,
  { code, severity, message, range, related, accepted }: Reported,
  indexes: ReadonlyMap<string, number>,
): unknown {
  return {
    ruleId: code,
    ruleIndex: indexes.get(code) ?? -1,
    level: levels[severity],
    message: { text: message },
    locations: [{ physicalLocation: placeOf(path, range) }],
    ...(related.length === 0
      ? {}
      : {
          relatedLocations: related.map((one, id) => ({
            id,
            message: { text: one.message },
            physicalLocation: placeOf(path, one.range),
          })),
        }),
    // What stays an error although it was accepted must not be hidden by a viewer.
    suppressions:
      accepted === undefined || severity === 'error'
        ? []
        : [{ kind: 'inSource', status: 'accepted', justification: accepted.reason }],
    ...(accepted === undefined ? {} : { properties: { accepted } }),
  };
}

const placeOf = (path: string, { start, end }: LineRange): unknown => ({
  artifactLocation: { uri: uriOf(path) },
  region: {
    startLine: start.line + 1,
    startColumn: start.character + 1,
    endLine: end.line + 1,
    endColumn: end.character + 1,
  },
});

/** A path as the reference of a URI, percent-encoded. */
function uriOf(path: string): string {
  return isAbsolute(path) ? pathToFileURL(path).href : path.split(sep).map(encodeURIComponent).join('/');
}
