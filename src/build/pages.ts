/** Writes the head of each check's page from the check itself; the examples below it are written by hand. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { sourceFiles } from '../checks/generated/source-files.ts';
import { catalogue, type Check } from '../checks/index.ts';
import { caution } from '../documents/caution.ts';
import { citation } from '../reference/sources/index.ts';

const checks = join(import.meta.dirname, '..', 'checks');

const marks: Readonly<Record<string, string>> = {
  Q: 'read in this source',
  Q2: 'read in a secondary page that names this source',
  M: 'from memory, not verified',
  common: 'not verified',
  format: 'a rule of the format',
};

export const pagePath = (code: string): string => join(checks, `${code}.md`);

const quoted = (keys: readonly string[]): string => keys.map((key) => `\`${key}\``).join(', ');

/** Where the sources of a check differ, what is followed, and the setting that follows another. */
function differenceText({ sourcesDiffer }: Check): readonly string[] {
  if (sourcesDiffer === undefined) return [];
  const { how, settings } = sourcesDiffer;
  const setting =
    settings.length === 0
      ? 'No setting follows another, since this is a danger.'
      : settings.join() === 'severities'
        ? 'No setting follows another source; `severities` in the practice file raises, lowers or turns off this check.'
        : `To follow another, set ${quoted(settings)} in the practice file.`;
  return [`Sources differ. ${how} ${setting}`, ''];
}

const fileOf: ReadonlyMap<string, string> = new Map(
  sourceFiles.flatMap(([path, checks]) => checks.map(({ code }): [string, string] => [code, path])),
);

/** The source file of a check, below the project's folder. */
export function sourceFileOf(code: string): string {
  const path = fileOf.get(code);
  if (path === undefined) throw new Error(`no file has the check ${code}`);
  return path;
}

/** The head of a page: what the check is, why it matters, and where its facts are from. */
export function headOf(check: Check): string {
  const sources = check.sources.map(({ source, mark }) => `- ${citation(source)} (${marks[mark] ?? mark})`);
  return [
    '<!-- head: generated from the check, edit there -->',
    `# ${check.code}`,
    '',
    `${check.title}. Severity: ${check.severity}.`,
    '',
    check.why,
    '',
    ...differenceText(check),
    ...sources,
    '',
    `Source: \`${sourceFileOf(check.code)}\``,
    '',
    caution,
    '',
    '<!-- /head -->',
  ].join('\n');
}

/** A page with its head renewed. */
export function renewed(page: string, check: Check): string {
  const end = '<!-- /head -->';
  const at = page.indexOf(end);
  return headOf(check) + (at < 0 ? `\n\n${page}` : page.slice(at + end.length));
}

export function writePages(): void {
  for (const check of catalogue) {
    const path = pagePath(check.code);
    if (!existsSync(path)) {
      console.warn(
        `${check.code} has no page yet: ${join('src/checks', `${check.code}.md`)} in ${dirname(path)}`,
      );
      continue;
    }
    const page = readFileSync(path, 'utf8');
    const fresh = renewed(page, check);
    if (fresh !== page) writeFileSync(path, fresh);
  }
}

if (process.argv[1] === import.meta.filename) writePages();
