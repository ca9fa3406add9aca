import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { mapsOf, unionFaults, withoutHelp, type JsonSchema } from '../../src/build/schema-shape.ts';

const schemas = ['note', 'practice'].map((name) => ({
  name,
  schema: JSON.parse(readFileSync(`schemas/${name}.schema.json`, 'utf8')) as JsonSchema,
}));

const map = (properties: object): object => ({ type: 'object', properties });

describe('the schemas', () => {
  for (const { name, schema } of schemas) {
    it(`${name}: has no alternatives that can't be told apart`, () => {
      assert.deepEqual(unionFaults(schema), []);
    });

    it(`${name}: has a help text for every key`, () => {
      for (const { keys } of mapsOf(schema, name))
        for (const { key, description } of keys) assert.match(description, /\w{3}.*/, key);
    });
  }

  it('a key without a help text is refused', () => {
    assert.throws(
      () => mapsOf({ properties: { site: { 'x-reads': 'text' } } }, 'note'),
      /note\.site has no description/,
    );
  });

  it("two maps without a tag can't be told apart", () => {
    const bad = { properties: { a: { oneOf: [map({ x: {} }), map({ y: {} })] } } };
    assert.deepEqual(unionFaults(bad), [
      "#/properties/a/oneOf: branches can't be told apart by type or by a constant",
    ]);
    assert.equal(unionFaults({ anyOf: [{ type: 'string' }, { type: 'string' }] }).length, 1);
    assert.equal(
      unionFaults({ oneOf: [map({ kind: { const: 'a' } }), map({ kind: { const: 'a' } })] }).length,
      1,
    );
  });

  it('a tag or a type tells alternatives apart', () => {
    assert.deepEqual(
      unionFaults({ oneOf: [map({ kind: { const: 'a' } }), map({ kind: { const: 'b' } })] }),
      [],
    );
    assert.deepEqual(unionFaults({ anyOf: [{ type: 'string' }, map({})] }), []);
  });

  it('a validator gets them without the words for people, and keys may be called like those', () => {
    const { schema } = schemas[0]!;
    assert.doesNotMatch(JSON.stringify(withoutHelp(schema)), /"x-|"description"|"number"/);
    assert.deepEqual(
      withoutHelp({ title: 'a', properties: { title: { description: 'b', type: 'string' } } }),
      {
        properties: { title: { type: 'string' } },
      },
    );
  });
});
