/** Collects what the editor says, so that it can be translated: the keys of src/editor/l10n/bundle.l10n.json. */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { handoutFormats } from '../documents/handout/index.ts';
import { scheduleFormats } from '../documents/schedule/index.ts';
import { summaryFormats } from '../documents/summary/index.ts';

const editor = join(import.meta.dirname, '..', 'editor');
export const stringsFile = join(editor, 'l10n', 'bundle.l10n.json');

/** Every text in a call of `l10n.t`, and the titles of what can be exported, in the order of the alphabet. */
export function strings(): Readonly<Record<string, string>> {
  const files = readdirSync(editor, { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.ts'),
  );
  const found = files.flatMap((name) =>
    [...readFileSync(join(editor, name), 'utf8').matchAll(/\bl10n\.t\(\s*(?:'([^']*)'|"([^"]*)")/g)].map(
      ([, single, double]) => single ?? double ?? '',
    ),
  );
  const titles = [summaryFormats, handoutFormats, scheduleFormats].flatMap(
    (formats: Readonly<Record<string, { readonly title: string }>>) =>
      Object.values(formats).map(({ title }) => title),
  );
  return Object.fromEntries([...new Set([...found, ...titles])].sort().map((text) => [text, text]));
}

export function writeStrings(): void {
  mkdirSync(dirname(stringsFile), { recursive: true });
  writeFileSync(stringsFile, `${JSON.stringify(strings(), null, 2)}\n`);
}

if (process.argv[1] === import.meta.filename) writeStrings();
