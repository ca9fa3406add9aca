import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { mapsOf, type JsonSchema } from '../../src/build/schema-shape.ts';

const root = join(import.meta.dirname, '../..');
const folders = ['practice', 'dose', 'followup', 'checks', 'documents', 'note/signature'];

/** The program without the folder that is generated: what is read of a note is read as `.property` or taken apart. */
const program = folders
  .flatMap((folder) =>
    readdirSync(join(root, 'src', folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts') && !name.includes('generated'))
      .map((name) => readFileSync(join(root, 'src', folder, name), 'utf8')),
  )
  .join('\n');

const camel = (key: string): string => key.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());

describe('keys of the schemas', () => {
  for (const file of ['note', 'practice']) {
    it(`are all read by something: ${file}`, () => {
      const schema = JSON.parse(
        readFileSync(join(root, 'schemas', `${file}.schema.json`), 'utf8'),
      ) as JsonSchema;
      // A key that is read and not in the schema does not compile: the types are generated from it.
      const unread = mapsOf(schema, file).flatMap(({ name, keys }) =>
        keys
          .filter(({ key }) => {
            const property = camel(key);
            return !new RegExp(`[.{,]\\s*${property}\\b|'${key}'|'${property}'`).test(program);
          })
          .map(({ key }) => `${name}.${key}`),
      );
      assert.deepEqual(unread, []);
    });
  }
});
