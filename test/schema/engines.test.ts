import assert from 'node:assert/strict';
import { readdirSync, readFileSync, existsSync } from 'node:fs';
import { join } from 'node:path';
import { Validator } from '@cfworker/json-schema';
import fc from 'fast-check';
import { noteIndex, practiceIndex, readNote, readPractice } from '../../src/note/read.ts';
import { plainData, type Data } from '../../src/schema/data.ts';
import * as validators from '../../src/schema/generated/validators.js';

type FileKind = 'note' | 'practice';

/** A second engine, written independently, reading the schema as published. */
const second = (kind: FileKind): Validator =>
  new Validator(JSON.parse(readFileSync(`schemas/${kind}.schema.json`, 'utf8')) as object, '2020-12', false);
const engines = { note: second('note'), practice: second('practice') };

const texts = (folder: string, kind: FileKind): string[] =>
  existsSync(folder)
    ? readdirSync(folder, { recursive: true, encoding: 'utf8' })
        .filter((name) => name.endsWith('.wheal.yaml'))
        .filter((name) => name.endsWith('practice.wheal.yaml') === (kind === 'practice'))
        .map((name) => readFileSync(join(folder, name), 'utf8'))
    : [];
const examples = (kind: FileKind): string[] =>
  readdirSync('src/checks', { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.md'))
    .flatMap((name) => [
      ...readFileSync(join('src/checks', name), 'utf8').matchAll(/^```yaml(.*)\n([\s\S]*?)^```$/gm),
    ])
    .filter(([, info]) => info?.includes('practice') === (kind === 'practice'))
    .map(([, , text]) => text!);
const dataOf = (kind: FileKind, text: string): Data[] => {
  const { root, respelled } = kind === 'note' ? readNote(text) : readPractice(text);
  const index = kind === 'note' ? noteIndex : practiceIndex;
  return root === null ? [] : [plainData(root, kind, index, respelled).data];
};
const files = (kind: FileKind): Data[] =>
  [...texts('samples', kind), ...texts('test/fixtures', kind), ...examples(kind)].flatMap((text) =>
    dataOf(kind, text),
  );

const agree = (kind: FileKind, data: Data): void => {
  const plain = JSON.parse(JSON.stringify(data)) as unknown;
  const answer = engines[kind].validate(plain);
  assert.equal(validators[kind](data), answer.valid, JSON.stringify(plain));
};

type Path = readonly (string | number)[];

/** Every place in some data. */
function places(data: Data, path: Path = []): Path[] {
  if (data === null || typeof data === 'string') return [path];
  const parts: [string | number, Data][] = Array.isArray(data)
    ? data.map((item, at) => [at, item])
    : Object.entries(data);
  return [path, ...parts.flatMap(([key, value]) => places(value, [...path, key]))];
}

type Change = (parent: Record<string | number, Data>, key: string | number) => void;
const changes: readonly Change[] = [
  (parent, key) => Reflect.deleteProperty(parent, key),
  (parent, key) => {
    parent[`${key}x`] = parent[key]!;
    Reflect.deleteProperty(parent, key);
  },
  (parent, key) => (parent[`${key}-2`] = parent[key]!),
  (parent, key) => (parent[key] = []),
  (parent, key) => (parent[key] = {}),
  (parent, key) => (parent[key] = 'text'),
  (parent, key) => (parent[key] = [['text']]),
  (parent, key) => (parent[key] = null),
];

describe('the generated validator', () => {
  for (const [kind, least] of [
    ['note', 50],
    ['practice', 10],
  ] as const) {
    const all = files(kind);

    it(`agrees with a second engine on every ${kind} of the project`, () => {
      assert.ok(all.length > least);
      for (const data of all) agree(kind, data);
      assert.ok(all.some((data) => validators[kind](data)));
    });

    it(`agrees with it on a ${kind} with keys dropped, renamed, doubled and of the wrong kind`, () => {
      const answers = new Set<boolean>();
      fc.assert(
        fc.property(fc.constantFrom(...all), fc.nat(), fc.constantFrom(...changes), (data, at, change) => {
          const copy = structuredClone(JSON.parse(JSON.stringify(data)) as Data);
          const ways = places(copy).slice(1);
          const path = ways[at % Math.max(1, ways.length)];
          if (path === undefined) return;
          let parent = copy as Record<string | number, Data>;
          for (const key of path.slice(0, -1)) parent = parent[key] as Record<string | number, Data>;
          if (Array.isArray(parent) && change === changes[0]) parent.splice(Number(path.at(-1)), 1);
          else change(parent, path.at(-1)!);
          const changed = JSON.parse(JSON.stringify(copy)) as Data;
          agree(kind, changed);
          answers.add(validators[kind](changed));
        }),
        { numRuns: 200 },
      );
      assert.deepEqual([...answers].sort(), [false, true]);
    });
  }

  it('reads maps without a prototype, and keys with names from one', () => {
    const { root, respelled } = readNote('visit: x\n__proto__: 1\nconstructor: {prototype: 2}\n');
    const { data } = plainData(root!, 'note', noteIndex, respelled);
    assert.deepEqual(Object.keys(data as object), ['visit', '__proto__', 'constructor']);
    assert.equal(validators.note(data), false);
    assert.ok(validators.note.errors?.some(({ params }) => params['additionalProperty'] === '__proto__'));
  });
});
