/** Writes the head of each check's page from the check itself; the examples below it are written by hand. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { sourceFiles } from '../checks/generated/source-files.ts';
import { catalogue, type Check } from '../checks/index.ts';
import { checkHead } from '../documents/check-page.ts';
import { headEnd as end } from './page-parts.ts';

const checks = join(import.meta.dirname, '..', 'checks');

export const pagePath = (code: string): string => join(checks, `${code}.md`);

const fileOf: ReadonlyMap<string, string> = new Map(
  sourceFiles.flatMap(([path, checks]) => checks.map(({ code }): [string, string] => [code, path])),
);

/** The source file of a check, below the project's folder. */
export function sourceFileOf(code: string): string {
  const path = fileOf.get(code);
  if (path === undefined) throw new Error(`no file has the check ${code}`);
  return path;
}

/** The head of a page: what the check is, why it matters, where its facts are from, and its source file. */
const headOf = (check: Check): string =>
  [
    '<!-- head: generated from the check, edit there -->',
    checkHead(check, `Source: \`${sourceFileOf(check.code)}\``),
    end,
  ].join('\n');

/** A page with its head renewed. */
export function renewed(page: string, check: Check): string {
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
