import assert from 'node:assert/strict';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { Validator, type Schema } from '@cfworker/json-schema';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { folder, inLimit, wheal } from '../cli/run.ts';

const root = join(import.meta.dirname, '..', '..');
const schemas = join(root, 'schemas', 'output');
const notes = ['samples', 'test/fixtures/lean'];
const dose = ['--agent', 'lidocaine', '--concentration', '1%', '--weight', '7kg', '--age', '7mo'];
const sample = (name: string): string => join('samples', `${name}.wheal.yaml`);

/** The command lines whose outputs are held to the schema of their command. */
const lines: Readonly<Record<string, readonly (readonly string[])[]>> = {
  check: [notes],
  summary: readdirSync(join(root, 'samples'))
    .filter((name) => name !== 'practice.wheal.yaml')
    .map((name) => [join('samples', name)]),
  schedule: [notes],
  open: [notes],
  dose: [dose, ['--agent', 'bupivacaine', '--concentration', '0.25%', '--weight', '62kg']],
  specimens: ['2026-03-02', '2026-03-06', '2026-03-31'].map((day) => [...notes, '--on', day]),
  checks: [[]],
  verify: [],
};

const read = (name: string): Schema =>
  JSON.parse(readFileSync(join(schemas, `${name}.schema.json`), 'utf8')) as Schema;

/** Asks two engines what they have against values. */
function faultsBy(schema: Schema): (value: unknown) => readonly string[] {
  const ajv = new Ajv2020({ allErrors: true, strict: true, strictRequired: false, allowUnionTypes: true });
  const first = ajv.compile(schema);
  const second = new Validator(schema, '2020-12');
  return (value) => [
    ...(first(value) ? [] : (first.errors ?? [])).map(
      (one) => `${one.instancePath} ${one.message ?? ''} ${JSON.stringify(one.params)}`,
    ),
    ...second.validate(value).errors.map((one) => `${one.instanceLocation} ${one.error}`),
  ];
}

async function jsonOf(name: string, argv: readonly string[], cwd = root): Promise<unknown> {
  const { out } = await wheal([name, ...argv, '--format', 'json'], { cwd, today: () => '2026-04-30' });
  return JSON.parse(out);
}

describe('JSON outputs', () => {
  it('have a schema each', () => {
    assert.deepEqual(
      readdirSync(schemas).sort(),
      Object.keys(lines)
        .map((name) => `${name}.schema.json`)
        .sort(),
    );
  });

  for (const [name, all] of Object.entries(lines))
    it(`wheal ${name} keeps to its schema`, async () => {
      const faults = faultsBy(read(name));
      for (const argv of all) {
        const value = await jsonOf(name, argv);
        assert.equal((value as { wheal: unknown }).wheal, 1);
        assert.deepEqual(faults(value), [], argv.join(' '));
      }
    });

  it('wheal verify keeps to its schema: signed, changed, unsigned, unreadable', async () => {
    const cwd = folder({
      'a.wheal.yaml': inLimit,
      'b.wheal.yaml': inLimit,
      'c.wheal.yaml': '- a\n',
      'd.wheal.yaml': inLimit,
      'e.wheal.yaml': `${inLimit}signed: {by: K.O., at: 2026-03-06 09:00}\n`,
    });
    for (const name of ['a', 'b'])
      assert.equal((await wheal(['sign', `${name}.wheal.yaml`, '--by', 'K.O.'], { cwd })).code, 0);
    const signed = readFileSync(join(cwd, 'b.wheal.yaml'), 'utf8');
    writeFileSync(join(cwd, 'b.wheal.yaml'), signed.replace('punch', 'shave'));
    const value = await jsonOf('verify', ['.'], cwd);
    const { files } = value as { files: { state: string }[] };
    assert.deepEqual(
      files.map(({ state }) => state),
      ['unchanged', 'changed', 'unreadable', 'unsigned', 'no digests'],
    );
    assert.deepEqual(faultsBy(read('verify'))(value), []);
  });

  it('wheal summary keeps to its schema where there is no summary', async () => {
    const value = await jsonOf('summary', ['a.wheal.yaml'], folder({ 'a.wheal.yaml': '- a\n' }));
    assert.deepEqual(faultsBy(read('summary'))(value), []);
  });

  it('a key more or less, or another type, is found by both engines', async () => {
    const value = (await jsonOf('check', [sample('over-the-limit')])) as Record<string, unknown>;
    const faults = faultsBy(read('check'));
    const [file] = value['files'] as Record<string, unknown>[];
    const less = { ...file };
    Reflect.deleteProperty(less, 'dose');
    for (const wrong of [
      { ...value, more: 1 },
      { ...value, wheal: '1' },
      { ...value, files: [less] },
      { ...value, files: [{ ...file, path: 1 }] },
    ])
      assert.ok(faults(wrong).length >= 2, JSON.stringify(Object.keys(wrong)));
  });

  it('cite each source beside its id', async () => {
    const { files } = (await jsonOf('check', ['samples'])) as {
      files: { findings: { sources: string[]; citations: string[] }[] }[];
    };
    const findings = files.flatMap((file) => file.findings);
    assert.ok(findings.some(({ sources }) => sources.length > 0));
    for (const { sources, citations } of findings) {
      assert.equal(citations.length, sources.length);
      for (const citation of citations) assert.ok(citation.length > 10, citation);
    }
  });
});

describe('ndjson', () => {
  it('has in each line what the list of its name has in the JSON', async () => {
    for (const [name, lists] of Object.entries({
      check: { files: 'file' },
      schedule: { items: 'item', undated: 'undated', notRead: 'notRead' },
      open: { items: 'item', notRead: 'notRead' },
      specimens: { specimens: 'specimen', counts: 'counts', notRead: 'notRead' },
    })) {
      const { out } = await wheal([name, 'samples', '--format', 'ndjson'], { cwd: root });
      const whole = { ...(read(name) as Record<string, unknown>), $id: 'urn:wheal:one' };
      for (const key of ['type', 'required', 'properties', 'additionalProperties'])
        Reflect.deleteProperty(whole, key);
      const faults = new Map(
        Object.entries(lists).map(([list, one]) => [list, faultsBy({ ...whole, $ref: `#/$defs/${one}` })]),
      );
      for (const line of out.trimEnd().split('\n')) {
        const { wheal: version, record, asOf, on, ...rest } = JSON.parse(line) as Record<string, unknown>;
        assert.equal(version, 1);
        assert.equal(typeof (asOf ?? on), name === 'check' ? 'undefined' : 'string');
        assert.deepEqual(faults.get(String(record))?.(rest), []);
      }
    }
  });
});

describe('SARIF by the schema of OASIS', () => {
  // Draft 4, which only one of the engines knows.
  const schema = createRequire(import.meta.url)(
    '@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json',
  ) as Schema;

  for (const argv of [['samples'], ['test/fixtures/lean', '--pages', 'https://intranet.example/checks']])
    it(`has no fault: ${argv.join(' ')}`, async () => {
      const { out } = await wheal(['check', ...argv, '--format', 'sarif'], { cwd: root });
      const { valid, errors } = new Validator(schema, '4', false).validate(JSON.parse(out));
      assert.ok(valid, JSON.stringify(errors.slice(0, 5)));
    });

  it('finds what is wrong', async () => {
    const { out } = await wheal(['check', 'samples', '--format', 'sarif'], { cwd: root });
    const wrong = out.replace('"startLine":', '"startLine":-');
    assert.equal(new Validator(schema, '4').validate(JSON.parse(wrong)).valid, false);
  });
});
