import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { pagePath } from '../../src/build/pages.ts';
import { catalogue, messageOf } from '../../src/checks/index.ts';
import { documentOf, startIncumbent } from '../bench/incumbent.ts';
import { examplesUnder } from '../checks/examples.ts';
import { judge } from '../checks/tester.ts';

const root = join(import.meta.dirname, '..', '..');

interface Text {
  readonly name: string;
  readonly text: string;
}

/** Every note of a folder. */
const notesIn = (folder: string): readonly Text[] =>
  readdirSync(join(root, folder))
    .filter((name) => name.endsWith('.wheal.yaml') && name !== 'practice.wheal.yaml')
    .map((name) => ({ name, text: readFileSync(join(root, folder, name), 'utf8') }));

const examples: readonly Text[] = catalogue
  .filter(({ code }) => !code.startsWith('practice/'))
  .flatMap(({ code }) =>
    examplesUnder(readFileSync(pagePath(code), 'utf8'), 'Good').map(({ text }) => ({ name: code, text })),
  );

/** The same notes in the other spelling of each key that has one, as a British clinic writes it. */
const british = ({ name, text }: Text): Text => ({
  name: `${name}, British`,
  text: text.replace(/\b(an)(esthetic:)/g, '$1a$2').replace(/\bh(emostasis:)/g, 'ha$1'),
});

const texts = [...notesIn('samples'), ...notesIn('test/fixtures/ok'), ...examples];

/** The key that a message of the language server is about. */
const keyIn = (message: string): string =>
  /^(?:Missing property "([^"]+)"|Property (\S+) is not allowed)/.exec(message)?.slice(1).find(Boolean) ??
  message;

const service = startIncumbent(join(root, 'schemas', 'generated', 'note.schema.json'));

async function messagesOn(text: string): Promise<readonly string[]> {
  const found = await service.doValidation(documentOf(text), false);
  return found.map(({ message }) => message);
}

/** What the server has against a note and Wheal has not. */
async function falseAlarms({ name, text }: Text): Promise<readonly string[]> {
  const messages = await messagesOn(text);
  if (messages.length === 0) return [];
  const own = judge(text).findings.map(messageOf).join('\n');
  return messages.filter((one) => !own.includes(keyIn(one))).map((one) => `${name}: ${one}`);
}

describe('a general YAML language server with the schema of notes', () => {
  it('has nothing against a note that Wheal has not, in American or British spelling', async function () {
    this.timeout(60_000);
    assert.ok(texts.length > 300, `${texts.length} texts`);
    const others = texts.map(british).filter(({ text }, index) => text !== texts[index]?.text);
    assert.ok(others.length > 100, `${others.length} texts`);
    const alarms = [];
    for (const one of [...texts, ...others]) alarms.push(...(await falseAlarms(one)));
    assert.deepEqual(alarms, []);
  });

  it('knows a key by each of its spellings, and needs one of them', async () => {
    const note = (id: string): string =>
      `visit: 2026-03-02\npatient: {${id}}\nprocedures: [{site: chin, method: punch}]\n`;
    for (const id of ['id: C-1', 'mrn: C-1', 'chart: C-1', 'chart-number: C-1'])
      assert.deepEqual(await messagesOn(note(id)), [], id);
    assert.notDeepEqual(await messagesOn(note('sex: female')), []);
  });

  it('is given schemas that are right by themselves', () => {
    for (const file of ['note', 'practice']) {
      const schema = JSON.parse(
        readFileSync(join(root, 'schemas', 'generated', `${file}.schema.json`), 'utf8'),
      ) as object;
      const ajv = new Ajv2020({ strict: false });
      assert.equal(ajv.validateSchema(schema), true, ajv.errorsText());
    }
  });

  it('still finds a misspelled key', async () => {
    const found = await messagesOn(
      'visit: 2026-03-02\npatient: {id: C-1}\nprocedures: [{sitte: chin, method: punch}]\n',
    );
    assert.ok(found.includes('Property sitte is not allowed.'), found.join('\n'));
  });
});
