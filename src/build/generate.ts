/**
 * Writes what is made from the schemas and from the folders of checks:
 * the types and shape tables of both files, the validators, the help texts, the list of checks.
 */
import { mkdirSync, readdirSync, readFileSync, writeFileSync, existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import standalone from 'ajv/dist/standalone/index.js';
import { argumentsIn, catalogue as sentences } from '../documents/handout/sentences/index.ts';
import { realWordsText } from './words/real-words.ts';
import {
  mapsOf,
  unionFaults,
  withAliases,
  withoutHelp,
  type JsonSchema,
  type KeySchema,
  type MapSchema,
} from './schema-shape.ts';

const root = join(import.meta.dirname, '..', '..');
const files = [
  { file: 'note', root: 'note' },
  { file: 'practice', root: 'practice' },
] as const;

function readSchema(file: string): JsonSchema {
  return JSON.parse(readFileSync(join(root, 'schemas', `${file}.schema.json`), 'utf8')) as JsonSchema;
}

function write(path: string, text: string): void {
  const target = join(root, path);
  if (existsSync(target) && readFileSync(target, 'utf8') === text) return;
  mkdirSync(dirname(target), { recursive: true });
  writeFileSync(target, text);
}

export const camel = (key: string): string =>
  key.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
const pascal = (name: string): string => name[0]!.toUpperCase() + camel(name).slice(1);
const typeName = (file: string, map: string): string =>
  file === map ? pascal(file) : file === 'note' ? pascal(map) : `Practice${pascal(map)}`;

const valueTypes: Readonly<Record<string, string>> = {
  text: 'string',
  word: 'string',
  site: 'string',
  date: 'string',
  plannedDay: 'string',
  count: 'number',
  decimal: 'number',
  yesno: 'boolean',
  moment: 'Moment',
  occasion: 'Occasion',
  age: 'Age',
  mass: 'Quantity',
  length: 'Quantity',
  volume: 'Quantity',
  area: 'Quantity',
  concentration: 'Quantity',
  strength: 'string',
  dimensions: 'Dimensions',
  dilution: 'Dilution',
  mixture: 'Mixture',
  weighed: 'Weighed',
  sutureSize: 'string',
};

function fieldType(file: string, key: KeySchema): string {
  if (key.open) return 'readonly OpenEntry[]';
  const value = key.reads === undefined ? undefined : valueTypes[key.reads];
  if (key.reads !== undefined && value === undefined) throw new Error(`no reader is called ${key.reads}`);
  const item = key.map === undefined ? `Leaf<${value}>` : typeName(file, key.map);
  return key.list ? `readonly ${item}[]` : item;
}

function interfaceText(file: string, map: MapSchema): string {
  const fields = map.keys.map(
    (key) => `  /** ${key.description} */\n  readonly ${camel(key.key)}?: ${fieldType(file, key)};`,
  );
  return `export interface ${typeName(file, map.name)} extends Part {\n${fields.join('\n')}\n}\n`;
}

function typesText(): string {
  const bodies = files.flatMap(({ file }) =>
    mapsOf(readSchema(file), file).map((map) => interfaceText(file, map)),
  );
  return [
    '// Generated from the schemas. Do not edit.',
    "import type { Leaf, OpenEntry, Part } from '../tree/leaf.ts';",
    "import type { Age, Dilution, Dimensions, Mixture, Moment, Occasion, Quantity, Weighed } from '../values/values.ts';\n",
    ...bodies,
  ].join('\n');
}

function shapesText(): string {
  const tables = files.map(({ file }) => {
    const maps = mapsOf(readSchema(file), file).map((map) => [
      map.name,
      {
        title: map.title,
        required: map.required,
        keys: map.keys.map((key) => ({ ...key, prop: camel(key.key) })),
      },
    ]);
    return `export const ${file}Shapes: Shapes = ${JSON.stringify(Object.fromEntries(maps), null, 1)};\n`;
  });
  return [
    '// Generated from the schemas. Do not edit.',
    "import type { Shapes } from '../tree/shape.ts';\n",
    ...tables,
  ].join('\n');
}

function validatorText(): string {
  for (const { file } of files) {
    const faults = unionFaults(readSchema(file));
    if (faults.length > 0) throw new Error(faults.join('\n'));
  }
  const schemas = files.map(({ file }) => withoutHelp(readSchema(file)) as JsonSchema);
  const ajv = new Ajv2020({
    allErrors: true,
    strict: true,
    strictTypes: false,
    strictRequired: false,
    messages: false,
    inlineRefs: false,
    schemas: schemas as Record<string, unknown>[],
    code: { source: true, esm: true },
  });
  // The package is CommonJS: through an import its function may be one level down.
  const generate = (typeof standalone === 'function'
    ? standalone
    : (standalone as { default: typeof standalone }).default) as unknown as (
    ajv: Ajv2020,
    exports: Record<string, string>,
  ) => string;
  const ids = Object.fromEntries(files.map(({ file }, index) => [file, schemas[index]!.$id!]));
  return withoutSchemas(withoutCopies(generate(ajv, ids)));
}

/**
 * A fault names the kinds that a value may have, and a map the keys, by way of a copy of the whole schema: both are put
 * where they are used, so that the package has no copy.
 * @throws Error where the generator writes this in other words than it used to
 */
function withoutSchemas(code: string): string {
  const schemas = new Map<string, unknown>();
  const without = code.replace(
    /const (schema\d+) = (\{.*?\});(?=const|function|let|var|export)/g,
    (_, name: string, text: string) => {
      schemas.set(name, JSON.parse(text));
      return '';
    },
  );
  const keys = new Map<string, string>();
  const inlined = without.replace(/(schema\d+)((?:\.\w+|\["[^"]+"\])+)/g, (_, name: string, path: string) => {
    const value = valueAt(schemas.get(name), path);
    if (value === undefined) throw new Error(`the validator refers to ${name}${path}`);
    if (typeof value !== 'object' || Array.isArray(value)) return JSON.stringify(value);
    const own = `${name}Keys`;
    keys.set(own, JSON.stringify(Object.fromEntries(Object.keys(value!).map((key) => [key, 0]))));
    return own;
  });
  return [inlined, ...[...keys].map(([name, text]) => `const ${name} = ${text};\n`)].join('');
}

/** What is at a path such as `.properties["note-id"].type`. */
function valueAt(root: unknown, path: string): unknown {
  let value = root;
  for (const [, plain, quoted] of path.matchAll(/\.(\w+)|\["([^"]+)"\]/g))
    value = (value as Record<string, unknown> | undefined)?.[plain ?? quoted ?? ''];
  return value;
}

/**
 * Each list item with a fault would copy the faults of all items before it, which is quadratic in a long list.
 * @throws Error where the generator writes this step in other words than it used to
 */
function withoutCopies(code: string): string {
  const linear = code.replace(
    /vErrors === null \? (\w+)\.errors : vErrors\.concat\(\1\.errors\)/g,
    'vErrors === null ? $1.errors : joined(vErrors, $1.errors)',
  );
  if (linear === code || linear.includes('.concat('))
    throw new Error('the validator collects its faults anew');
  return `${linear}\nfunction joined(all, more) { for (const one of more) all.push(one); return all; }\n`;
}

const validatorTypes = `// Generated. Do not edit.
export interface SchemaError { readonly instancePath: string; readonly keyword: string; readonly params: Readonly<Record<string, unknown>> }
export interface Validator { (data: unknown): boolean; errors?: readonly SchemaError[] | null }
export const note: Validator;
export const practice: Validator;
`;

/** A file of checks, with the name of what it exports: one `check`, or a table of `checks`. */
interface CheckFile {
  /** Below `src/checks`. */
  readonly path: string;
  readonly exported: 'check' | 'checks';
}

/** Every file of a check's family: a new check is a new file, and nobody edits a list. */
function checkFiles(): readonly CheckFile[] {
  const base = join(root, 'src/checks');
  const families = readdirSync(base, { withFileTypes: true }).filter(
    (entry) => entry.isDirectory() && !['generated', 'running'].includes(entry.name),
  );
  return families.flatMap((family) =>
    readdirSync(join(base, family.name))
      .filter((name) => name.endsWith('.ts') && !name.startsWith('_'))
      .sort()
      .map((name): CheckFile => {
        const path = `${family.name}/${name}`;
        const one = /^export const check\b/m.test(readFileSync(join(base, path), 'utf8'));
        return { path, exported: one ? 'check' : 'checks' };
      }),
  );
}

const importsOf = (files: readonly CheckFile[]): string =>
  files.map(({ path, exported }, at) => `import { ${exported} as c${at} } from '../${path}';\n`).join('');

function catalogueText(files: readonly CheckFile[]): string {
  const list = files.map(({ exported }, at) => (exported === 'check' ? `c${at}` : `...c${at}`));
  return `// Generated from the folders of checks. Do not edit.
import type { Check } from '../check.ts';
${importsOf(files)}
export const catalogue: readonly Check[] = [${list.join(', ')}];
`;
}

/** Which file each check is in: for the pages only, so that no bundle has it. */
function sourceFilesText(files: readonly CheckFile[]): string {
  const rows = files.map(
    ({ path, exported }, at) =>
      `  ['src/checks/${path}', ${exported === 'check' ? `[c${at}]` : `c${at}`}],\n`,
  );
  return `// Generated from the folders of checks. Do not edit.
import type { Check } from '../check.ts';
${importsOf(files)}
export const sourceFiles: readonly (readonly [path: string, checks: readonly Check[]])[] = [
${rows.join('')}];
`;
}

/** The names of the handout's sentences with what each has filled in: checks are below the handout, and may not ask it. */
function sentencesText(): string {
  const rows = [...sentences.values()].map(({ id, en }) => [id, [...argumentsIn(en)]]);
  return [
    '// Generated from the sentences of the handout. Do not edit.',
    `export const sentences: Readonly<Record<string, readonly string[]>> = ${JSON.stringify(Object.fromEntries(rows), null, 1)};`,
    '',
  ].join('\n');
}

const realWordsFile = 'src/note/generated/real-words.ts';

const textOf = (path: string): string =>
  existsSync(join(root, path)) ? readFileSync(join(root, path), 'utf8') : '';

/** The keys of both files in every spelling. */
const keysOf = (): readonly string[] =>
  files.flatMap(({ file }) =>
    mapsOf(readSchema(file), file).flatMap(({ keys }) =>
      keys.flatMap(({ key, aliases }) => [key, ...aliases]),
    ),
  );

export function generate(): void {
  write('src/note/generated/types.ts', typesText());
  write('src/note/generated/shapes.ts', shapesText());
  write(realWordsFile, realWordsText(root, keysOf(), textOf(realWordsFile)));
  for (const { file } of files)
    write(
      `schemas/generated/${file}.schema.json`,
      `${JSON.stringify(withAliases(readSchema(file)), null, 2)}\n`,
    );
  write('src/schema/generated/validators.js', validatorText());
  write('src/schema/generated/validators.d.ts', validatorTypes);
  const ofChecks = checkFiles();
  write('src/checks/generated/catalogue.ts', catalogueText(ofChecks));
  write('src/checks/generated/source-files.ts', sourceFilesText(ofChecks));
  write('src/checks/generated/sentences.ts', sentencesText());
}

if (process.argv[1] === import.meta.filename) generate();
