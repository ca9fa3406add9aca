/** Collects what the editor says, so that it can be translated: the keys of src/editor/l10n/bundle.l10n.json. */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

const editor = join(import.meta.dirname, '..', 'editor');
export const stringsFile = join(editor, 'l10n', 'bundle.l10n.json');

/** Every text in a call of `l10n.t`, in the order of the alphabet. */
export function strings(): Readonly<Record<string, string>> {
  const files = readdirSync(editor, { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.ts'),
  );
  const found = files.flatMap((name) =>
    [...readFileSync(join(editor, name), 'utf8').matchAll(/\bl10n\.t\(\s*(?:'([^']*)'|"([^"]*)")/g)].map(
      ([, single, double]) => single ?? double ?? '',
    ),
  );
  return Object.fromEntries([...new Set(found)].sort().map((text) => [text, text]));
}

export function writeStrings(): void {
  mkdirSync(dirname(stringsFile), { recursive: true });
  writeFileSync(stringsFile, `${JSON.stringify(strings(), null, 2)}\n`);
}

if (process.argv[1] === import.meta.filename) writeStrings();
