import assert from 'node:assert/strict';
import { messageOf } from '../../../src/checks/index.ts';
import { fixed, flags, judge } from '../tester.ts';
import { before, own } from './_shape.ts';

describe('keys', () => {
  it('a misspelt key is one finding, with a fix, and its value counts', () => {
    const text = `${before}    anesthetic: {agent: lidocaine, concentration: 1%, ⟦volum⟧: 1 mL}\n`;
    const plain = text.replace(/[⟦⟧]/g, '');
    flags('shape/unknown-key', text, { severity: 'error' });
    assert.deepEqual(own(plain), ['shape/unknown-key']);
    assert.equal(fixed('shape/unknown-key', plain, 'volume'), plain.replace('volum:', 'volume:'));
  });

  it('a misspelt key and the missing key that it was to be are one finding', () => {
    const text =
      'visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - sitte: left upper back\n    methd: punch\n';
    assert.deepEqual(own(text), ['shape/unknown-key', 'shape/unknown-key']);
    assert.deepEqual(
      own('vist: 2026-03-02\npatient: {id: C-1}\nprocedures: [{site: chin, method: punch}]\n'),
      ['shape/unknown-key'],
    );
  });

  it('says where a key belongs that stands in the wrong part', () => {
    const [finding] = flags('shape/unknown-key', `⟦weight⟧: 62 kg\n${before}`);
    assert.match(messageOf(finding!), /patient/);
    assert.equal(finding!.form, 'elsewhere');
  });

  it('tells a key without a blank behind its colon from an unknown one', () => {
    const [finding] = flags('shape/unknown-key', `${before}    ⟦question:AK vs⟧: SCC\n`);
    assert.equal(finding!.form, 'blank');
  });

  it('does not offer a key that stands there already', () => {
    const [finding] = flags('shape/unknown-key', `${before}    ⟦methods⟧: shave\n`);
    assert.equal(finding!.data, undefined);
  });

  it('sends what may be a danger to its own key, and never away or to the remarks', () => {
    for (const [value, right] of [
      ['{agent: lidocaine, volume: 60 mL}', /`anesthetic`/],
      ['lidocaine, hives', /`anesthetic`/],
      ['bacitracin, hives', /`allergies`/],
      ['pacemaker', /`implants`/],
    ] as const) {
      const [finding] = flags('shape/unknown-key', `${before}    ⟦zzzzzzz⟧: ${value}\n`);
      assert.match(messageOf(finding!), right);
      assert.doesNotMatch(messageOf(finding!), /remarks/);
    }
  });

  it('speaks of remarks only in a part that has them', () => {
    const message = (text: string): string => messageOf(flags('shape/unknown-key', text)[0]!);
    assert.match(message(`${before}    ⟦zzzzzzz⟧: blue\n`), /under `remarks`/);
    assert.match(message(`⟦zzzzzzz⟧: blue\n${before}`), /under `remarks`/);
    assert.doesNotMatch(message(before.replace('id: C-1', 'id: C-1, ⟦zzzzzzz⟧: blue')), /remarks/);
  });

  for (const key of ['__proto__', 'constructor', 'toString', 'hasOwnProperty'])
    it(`${key} is an unknown key and no crash`, () => {
      flags('shape/unknown-key', `${before}    ⟦${key}⟧: {polluted: yes}\n`);
      assert.equal(({} as Record<string, unknown>)['polluted'], undefined);
      flags('shape/unknown-key', `⟦${key}⟧: 1\n${before}`);
    });

  it('names each key that is missing, at the first key of its item', () => {
    const findings = flags(
      'shape/missing-key',
      'visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - ⟦method⟧: punch\n  - ⟦site⟧: chin\n',
    ).map(({ args }) => args['key']);
    assert.deepEqual(findings, ['site', 'method']);
  });

  it('shows a hundred, and how many more there are', () => {
    const rows = Array.from({ length: 150 }, (_, at) => `zzz-${at}-zzz: 1\n`).join('');
    const findings = judge(before + rows).findings.filter(({ code }) => code === 'shape/unknown-key');
    assert.equal(findings.length, 101);
    assert.equal(findings.at(-1)?.form, 'more');
    assert.equal(findings.at(-1)?.args['count'], 50);
  });
});

describe('after a line that cannot be read', () => {
  it('nothing is said to be missing in the part that holds it', () => {
    assert.deepEqual(own('visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: chin\n    meth\n'), [
      'yaml/missing-colon',
    ]);
  });

  it('nor in the part above a line that is indented askew', () => {
    assert.deepEqual(own(`${before}events:\n  - on: 2026-03-03\n   kind: bleeding\n`), ['yaml/indentation']);
  });

  it('faults elsewhere stay', () => {
    const text = `${before}    closure: {how: none,, layer: skin}\n  - site: chin\n    method: punch\n    foo: 1\n`;
    assert.deepEqual(own(text), ['yaml/syntax', 'shape/unknown-key']);
  });
});
