import { safeJson } from '../../documents/safe-json.ts';
import { isAbsolute, sep } from 'node:path';
import { pathToFileURL } from 'node:url';
import { catalogue } from '../../checks/index.ts';
import { unreadable } from '../notes/files.ts';
import type { Checked, LineRange, Reported } from '../notes/judge.ts';
import type { Severity } from '../../note/tree/finding.ts';
import { version } from '../terminal/version.ts';
import { hasErrors, type Look, type Report } from './report.ts';

const levels: Readonly<Record<Severity, 'error' | 'warning' | 'note'>> = {
  error: 'error',
  warning: 'warning',
  information: 'note',
  hint: 'note',
};

/** What names the checks where nobody says at which address their pages are: SARIF wants an absolute one. */
const ownName = 'urn:wheal';
const ownPages = `${ownName}:check:`;

interface Rule {
  readonly id: string;
  readonly [member: string]: unknown;
}

/** The rules: the whole catalogue, and the one for files that can't be read. */
const rulesOf = (pages: string | undefined): readonly Rule[] => [
  ...catalogue.map(({ code, severity, title, why }) => ({
    id: code,
    shortDescription: { text: title },
    fullDescription: { text: why },
    help: { text: `${why} See src/checks/${code}.md.` },
    helpUri: pages === undefined ? `${ownPages}${code}` : `${pages}${code}.md`,
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
export function sarifReport({ pages }: Look): Report {
  const rules = rulesOf(pages);
  const indexes: ReadonlyMap<string, number> = new Map(rules.map(({ id }, index) => [id, index]));
  const log = {
    $schema: 'https://json.schemastore.org/sarif-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        tool: { driver: { name: 'wheal', version, informationUri: pages ?? ownName, rules } },
        columnKind: 'utf16CodeUnits',
      },
    ],
  };
  let first = true;
  return {
    // The results are written one by one into the run that is left open here.
    begin: () => `${JSON.stringify(log).slice(0, -'}]}'.length)},"results":[`,
    entry(checked) {
      const fingerprint = fingerprints(checked);
      const results = checked.findings.map((finding) => {
        const result = resultOf(checked.path, finding, indexes);
        return safeJson({ ...result, partialFingerprints: { 'wheal/v1': fingerprint(finding) } });
      });
      return { text: results.join(',\n'), errors: hasErrors(checked) };
    },
    add({ text }) {
      if (text === '') return '';
      const lead = first ? '\n' : ',\n';
      first = false;
      return `${lead}${text}`;
    },
    end: () => '\n]}]}\n',
  };
}

function resultOf(
  path: string,
  { code, severity, message, range, related, accepted }: Reported,
  indexes: ReadonlyMap<string, number>,
): object {
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

/**
 * Gives each finding of a file a number that stays the same when lines are put in above it: it follows from the check,
 * the line, and which of several alike it is.
 */
function fingerprints({ row }: Checked): (finding: Reported) => string {
  const seen = new Map<string, number>();
  return ({ code, range }) => {
    const key = `${code} ${row(range.start.line).trim()}`;
    const times = seen.get(key) ?? 0;
    seen.set(key, times + 1);
    const text = `${key} ${times}`;
    return [0x811c9dc5, 0x01000193].map((seed) => hashOf(text, seed)).join('');
  };
}

/** FNV-1a in 32 bits. */
function hashOf(text: string, seed: number): string {
  let hash = seed;
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  return (hash >>> 0).toString(16).padStart(8, '0');
}

/** A path as the reference of a URI, percent-encoded. */
function uriOf(path: string): string {
  return isAbsolute(path) ? pathToFileURL(path).href : path.split(sep).map(encodeURIComponent).join('/');
}
