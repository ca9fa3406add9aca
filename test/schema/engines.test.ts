import assert from 'node:assert/strict';
import { readdirSync, readFileSync, existsSync } from 'node:fs';
import { join } from 'node:path';
import { Validator } from '@cfworker/json-schema';
import fc from 'fast-check';
import { noteIndex, readNote } from '../../src/note/read.ts';
import { plainData, type Data } from '../../src/schema/data.ts';
import * as validators from '../../src/schema/generated/validators.js';

const schema = JSON.parse(readFileSync('schemas/note.schema.json', 'utf8')) as object;
/** A second engine, written independently, reading the schema as published. */
const second = new Validator(schema, '2020-12', false);

const texts = (folder: string): string[] =>
  existsSync(folder)
    ? readdirSync(folder, { recursive: true, encoding: 'utf8' })
        .filter((name) => name.endsWith('.wheal.yaml') && !name.endsWith('practice.wheal.yaml'))
        .map((name) => readFileSync(join(folder, name), 'utf8'))
    : [];
const examples = readdirSync('src/checks', { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.md'))
  .flatMap((name) => [
    ...readFileSync(join('src/checks', name), 'utf8').matchAll(/^```yaml(.*)\n([\s\S]*?)^```$/gm),
  ])
  .filter(([, info]) => info?.includes('practice') !== true)
  .map(([, , text]) => text!);
const notes = [...texts('samples'), ...texts('test/fixtures'), ...examples].flatMap((text) => {
  const { root, respelled } = readNote(text);
  return root === null ? [] : [plainData(root, 'note', noteIndex, respelled).data];
});

const agree = (data: Data): void => {
  const plain = JSON.parse(JSON.stringify(data)) as unknown;
  const answer = second.validate(plain);
  assert.equal(validators.note(data), answer.valid, JSON.stringify(plain));
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
  it('agrees with a second engine on every note of the project', () => {
    assert.ok(notes.length > 50);
    for (const data of notes) agree(data);
    assert.ok(notes.some((data) => validators.note(data)) && notes.some((data) => !validators.note(data)));
  });

  it('agrees with it on notes with keys dropped, renamed, doubled and of the wrong kind', () => {
    fc.assert(
      fc.property(fc.constantFrom(...notes), fc.nat(), fc.constantFrom(...changes), (data, at, change) => {
        const copy = structuredClone(JSON.parse(JSON.stringify(data)) as Data);
        const all = places(copy).slice(1);
        const path = all[at % Math.max(1, all.length)];
        if (path === undefined) return;
        let parent = copy as Record<string | number, Data>;
        for (const key of path.slice(0, -1)) parent = parent[key] as Record<string | number, Data>;
        if (Array.isArray(parent) && change === changes[0]) parent.splice(Number(path.at(-1)), 1);
        else change(parent, path.at(-1)!);
        agree(JSON.parse(JSON.stringify(copy)) as Data);
      }),
      { numRuns: 200 },
    );
  });

  it('reads maps without a prototype, and keys with names from one', () => {
    const { root, respelled } = readNote('visit: x\n__proto__: 1\nconstructor: {prototype: 2}\n');
    const { data } = plainData(root!, 'note', noteIndex, respelled);
    assert.deepEqual(Object.keys(data as object), ['visit', '__proto__', 'constructor']);
    assert.equal(validators.note(data), false);
    assert.ok(validators.note.errors?.some(({ params }) => params['additionalProperty'] === '__proto__'));
  });
});
