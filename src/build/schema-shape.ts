/** Reads the two schemas into the plain form that the generators write out. */
import type { KeyShape, MapShape } from '../note/tree/shape.ts';

/** A key as the schema lists it; the generator adds the property that its value is read into. */
export type KeySchema = Omit<KeyShape, 'prop'>;

export interface MapSchema extends Omit<MapShape, 'keys'> {
  readonly name: string;
  readonly keys: readonly KeySchema[];
}

export interface JsonSchema {
  readonly $id?: string;
  readonly title?: string;
  readonly description?: string;
  readonly type?: string | readonly string[];
  readonly $ref?: string;
  readonly items?: JsonSchema;
  readonly properties?: Readonly<Record<string, JsonSchema>>;
  readonly additionalProperties?: boolean | JsonSchema;
  readonly required?: readonly string[];
  readonly allOf?: readonly { readonly anyOf: readonly JsonSchema[] }[];
  readonly $defs?: Readonly<Record<string, JsonSchema>>;
  readonly 'x-reads'?: string;
  readonly 'x-words'?: string;
  readonly 'x-list'?: boolean;
  readonly 'x-text'?: string;
  readonly 'x-named'?: string;
  readonly 'x-line'?: string;
  readonly 'x-open'?: boolean;
  readonly 'x-signed'?: boolean;
  readonly 'x-aliases'?: readonly string[];
}

/**
 * The maps of a schema, the root first under the name `root`.
 * @throws Error naming the key that has no help text or no way to be read.
 */
export function mapsOf(schema: JsonSchema, root: string): readonly MapSchema[] {
  const definitions = Object.entries(schema.$defs ?? {});
  return [mapOf(root, schema), ...definitions.map(([name, definition]) => mapOf(name, definition))];
}

function mapOf(name: string, schema: JsonSchema): MapSchema {
  const keys = Object.entries(schema.properties ?? {}).map(([key, value]) => keyOf(name, key, value));
  return { name, title: schema.title ?? name, keys, required: schema.required ?? [] };
}

function keyOf(map: string, key: string, schema: JsonSchema): KeySchema {
  const where = `${map}.${key}`;
  if (schema.description === undefined) throw new Error(`${where} has no description`);
  const target = schema.$ref?.replace('#/$defs/', '');
  const open = schema['x-open'] === true;
  const reads = schema['x-reads'];
  if (!open && (target === undefined) === (reads === undefined)) {
    throw new Error(`${where} needs either a reader (x-reads) or a map ($ref)`);
  }
  return {
    key,
    description: schema.description,
    ...(reads === undefined ? {} : { reads }),
    ...(schema['x-words'] === undefined ? {} : { words: schema['x-words'] }),
    ...(target === undefined ? {} : { map: target }),
    ...shortForms(schema),
    list: schema['x-list'] === true,
    open,
    ...(schema['x-signed'] === false ? { unsigned: true as const } : {}),
    aliases: schema['x-aliases'] ?? [],
  };
}

/** How a map may be written in short. */
const shortForms = (schema: JsonSchema): Pick<KeySchema, 'text' | 'named' | 'line'> => ({
  ...(schema['x-text'] === undefined ? {} : { text: schema['x-text'] }),
  ...(schema['x-named'] === undefined ? {} : { named: schema['x-named'] }),
  ...(schema['x-line'] === undefined ? {} : { line: schema['x-line'] }),
});

/**
 * A schema without what is written for people and for our own generators, and without numbers and booleans, since
 * the reader gives all scalars as text: what a validator of read notes needs, and no more.
 */
export function withoutHelp(schema: unknown): unknown {
  if (Array.isArray(schema)) return schema.map(withoutHelp);
  if (typeof schema !== 'object' || schema === null) return schema;
  return Object.fromEntries(
    Object.entries(schema).flatMap(([key, value]) => {
      if (key === 'type' && Array.isArray(value)) return [[key, value.filter((type) => !scalars.has(type))]];
      if (key === 'properties' || key === '$defs') return [[key, eachOf(value)]];
      return key === 'title' || key === 'description' || key.startsWith('x-')
        ? []
        : [[key, withoutHelp(value)]];
    }),
  );
}

const scalars: ReadonlySet<unknown> = new Set(['number', 'boolean']);

/** The values have names of their own, which may be called `title` too. */
function eachOf(schemas: unknown): unknown {
  return Object.fromEntries(Object.entries(schemas as object).map(([name, one]) => [name, withoutHelp(one)]));
}

/**
 * A schema for programs that know nothing of `x-aliases`: each other spelling of a key is a key, and a key that is needed
 * may be there in any of its spellings.
 */
export function withAliases(schema: JsonSchema): JsonSchema {
  const { properties = {}, required = [], $defs = {} } = schema;
  const spellings = (key: string): readonly string[] => [key, ...(properties[key]?.['x-aliases'] ?? [])];
  const either = required.filter((key) => spellings(key).length > 1);
  return {
    ...schema,
    required: required.filter((key) => !either.includes(key)),
    // Empty, it would be no schema.
    ...(either.length > 0 && {
      allOf: either.map((key) => ({ anyOf: spellings(key).map((one) => ({ required: [one] })) })),
    }),
    properties: Object.fromEntries(
      Object.entries(properties).flatMap(([key, one]) => spellings(key).map((name) => [name, one])),
    ),
    $defs: Object.fromEntries(Object.entries($defs).map(([name, one]) => [name, withAliases(one)])),
  };
}

/**
 * Faults of a schema's unions: alternatives that can't be told apart by their type or by a tag give messages
 * that blame the wrong branch. Each fault is a path and a reason.
 */
export function unionFaults(schema: unknown, path = '#'): readonly string[] {
  if (Array.isArray(schema)) return schema.flatMap((item, index) => unionFaults(item, `${path}/${index}`));
  if (typeof schema !== 'object' || schema === null) return [];
  const own = ['oneOf', 'anyOf'].flatMap((keyword) => {
    const branches: unknown = (schema as Record<string, unknown>)[keyword];
    return Array.isArray(branches) && !toldApart(branches as Record<string, unknown>[])
      ? [`${path}/${keyword}: branches can't be told apart by type or by a constant`]
      : [];
  });
  return [...own, ...Object.entries(schema).flatMap(([key, value]) => unionFaults(value, `${path}/${key}`))];
}

function toldApart(branches: readonly Record<string, unknown>[]): boolean {
  const types = branches.map((branch) => (typeof branch['type'] === 'string' ? branch['type'] : 'object'));
  const sameType = types.filter((type, index) => types.indexOf(type) !== index);
  if (sameType.length === 0) return true;
  if (sameType.some((type) => type !== 'object')) return false;
  const tagged = branches.filter((_, index) => types[index] === 'object').map(constants);
  return [...(tagged[0]?.keys() ?? [])].some(
    (key) =>
      new Set(tagged.map((tags) => tags.get(key))).size === tagged.length &&
      tagged.every((tags) => tags.has(key)),
  );
}

function constants(branch: Record<string, unknown>): Map<string, unknown> {
  const properties = (branch['properties'] ?? {}) as Record<string, { const?: unknown }>;
  return new Map(
    Object.entries(properties).flatMap(([key, value]) =>
      value.const === undefined ? [] : [[key, value.const] as const],
    ),
  );
}
