import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { messageOf } from '../../../src/checks/index.ts';
import { wordTables } from '../../../src/checks/shape/_words.ts';
import { fixed, flags, judge, silent } from '../tester.ts';

const before =
  'visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: left upper back\n    method: punch\n';
const own = (text: string): string[] =>
  judge(text)
    .findings.map(({ code }) => code)
    .filter((code) => /^(yaml|shape)\//.test(code));

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

describe('values', () => {
  for (const [row, message] of [
    ['    ⟦lesion⟧: [a, b]', /takes a text; here it has a list/],
    ['    ⟦lesion⟧: {a: b}', /takes a text; here it has a map/],
    ['    accepted: ⟦yes⟧', /takes a map or a list; here it has a text/],
    ['    dressing: [⟦[a]⟧]', /takes a text/],
  ] as const)
    it(`of the wrong kind: ${row.trim()}`, () => {
      const marked = row.includes('[[') ? row : row;
      const findings = judge(`${before}${marked.replace(/[⟦⟧]/g, '')}\n`).findings.filter(
        ({ code }) => code === 'shape/wrong-kind',
      );
      assert.equal(findings.length, 1);
      assert.match(messageOf(findings[0]!), message);
    });

  it('missing behind a key: a warning, an error where the key is required', () => {
    flags('shape/empty-value', `${before}    ⟦lesion⟧:\n`, { severity: 'warning' });
    flags('shape/empty-value', `${before}    ⟦lesion⟧: ""\n`, { severity: 'warning' });
    flags('shape/empty-value', before.replace('method: punch', '⟦method⟧:'), { severity: 'error' });
    assert.deepEqual(own(before.replace('method: punch', 'method:')), ['shape/empty-value']);
  });

  it('?? is information, a warning where the key is required', () => {
    flags('shape/pending', `${before}    lesion: ⟦??⟧\n`, { severity: 'information' });
    flags('shape/pending', before.replace('method: punch', 'method: ⟦??⟧'), { severity: 'warning' });
    flags('shape/pending', `${before}    hemostasis: [pressure, ⟦??⟧]\n`, { severity: 'information' });
    flags('shape/pending', before.replace('{id: C-1}', '{id: C-1, allergies: [⟦??⟧]}'));
    assert.deepEqual(own('visit: 2026-03-02\npatient: ??\nprocedures: ??\n'), [
      'shape/pending',
      'shape/pending',
    ]);
  });
});

describe('words', () => {
  it('that deny something are not taken for a slip of what they deny', () => {
    const [finding] = flags('shape/unknown-word', `${before}    hemostasis: [pressure, ⟦no cautery⟧]\n`);
    assert.equal(finding?.form ?? 'main', 'main');
    assert.equal(finding?.data, undefined);
  });

  it('that no table has get the nearest one', () => {
    flags('shape/unknown-word', `${before}    relation: ⟦lesionel⟧\n`, { severity: 'warning' });
    assert.equal(
      fixed('shape/unknown-word', `${before}    relation: "lesionel"\n`, 'lesional'),
      `${before}    relation: "lesional"\n`,
    );
  });

  for (const word of ['constructor', '__proto__', 'toString'])
    it(`${word} is an unknown word and no crash`, () => {
      flags('shape/unknown-word', before.replace('method: punch', `method: ⟦${word}⟧`));
      assert.equal(
        judge(`${before}    anesthetic: {agent: ${word}, concentration: 1%, volume: 1 mL}\n`).failures.length,
        0,
      );
    });

  it('that stand in one text with commas become a list', () => {
    const text = `${before}    hemostasis: pressure, aluminum chloride\n`;
    assert.equal(
      fixed('shape/unknown-word', text, 'Change'),
      text.replace('pressure, aluminum chloride', '[pressure, aluminum chloride]'),
    );
  });

  it('that stand in one text with "and" become a list', () => {
    for (const [typed, list] of [
      ['pressure and aluminum chloride', '[pressure, aluminum chloride]'],
      ['pressure + aluminum chloride', '[pressure, aluminum chloride]'],
      ['pressure and a suture', '[pressure, suture]'],
      ['"pressure, then silver nitrate"', '[pressure, silver nitrate]'],
    ] as const) {
      const text = `${before}    hemostasis: ${typed}\n`;
      const plain = text.replaceAll('"', '');
      assert.equal(
        fixed('shape/unknown-word', plain, 'Change'),
        plain.replace(typed.replaceAll('"', ''), list),
      );
      flags('shape/unknown-word', `${before}    hemostasis: ⟦${typed}⟧\n`);
    }
    // Of what is not known nothing becomes a list.
    const [finding] = flags('shape/unknown-word', `${before}    hemostasis: ⟦pressure and prayer⟧\n`);
    assert.notEqual(finding?.form, 'list');
  });

  it('that tell of stitches in one line become a map', () => {
    for (const [typed, map] of [
      ['4-0 nylon x2', '{material: nylon, size: 4-0, count: 2}'],
      [
        '"2 simple interrupted 4-0 nylon"',
        '{material: nylon, size: 4-0, technique: simple interrupted, count: 2}',
      ],
      ['nylon 5/0, three running', undefined],
      [
        '5/0 polypropylene running subcuticular',
        '{material: polypropylene, size: 5-0, technique: running subcuticular}',
      ],
      ['4-0 nylon, 3 stitches', '{material: nylon, size: 4-0, count: 3}'],
      ['4-0 mystery x2', undefined],
      ['4-0 nylon and 5-0 nylon x2', undefined],
      ['no nylon', undefined],
    ] as const) {
      const text = `${before}    closure: ${typed}\n`;
      const [finding] = flags('shape/unknown-word', `${before}    closure: ⟦${typed}⟧\n`, {
        severity: 'warning',
      });
      if (map === undefined) assert.notEqual(finding?.form, 'stitches', typed);
      else assert.equal(fixed('shape/unknown-word', text, 'Change'), text.replace(typed, map));
    }
  });

  it('that are only a part of a text are said to be judged alone', () => {
    const [finding] = flags(
      'shape/unknown-word',
      `${before}    preparation: ⟦chlorhexidine in alcohol, allowed to dry⟧\n`,
    );
    assert.equal(finding?.form, 'part');
    assert.equal(finding.args.known, 'chlorhexidine in alcohol');
    const [other] = flags('shape/unknown-word', `${before}    preparation: ⟦no chlorhexidine this time⟧\n`);
    assert.equal(other?.form ?? 'main', 'main');
  });

  it('are known with a strength or a time beside them', () => {
    for (const row of [
      'preparation: chlorhexidine gluconate 2%',
      'preparation: 4% chlorhexidine',
      'hemostasis: [aluminium chloride 20%, pressure]',
      'hemostasis: aluminum chloride (35%)',
      'hemostasis: direct pressure x 5 min',
      'hemostasis: pressure for 10 minutes',
      "hemostasis: Monsel's solution",
    ])
      silent('shape/unknown-word', `${before}    ${row}\n`);
  });

  it('keep what a strength or a time says of another thing', () => {
    for (const [key, word] of [
      ['preparation', 'chlorhexidine 2% prayer'],
      ['hemostasis', 'aluminum chloride 20% in something'],
      ['depth', 'mid dermis 50%'],
      ['hemostasis', '20%'],
    ] as const)
      flags('shape/unknown-word', `${before}    ${key}: ⟦${word}⟧\n`);
  });

  it('count in any case, and with hyphens for blanks', () => {
    silent('shape/unknown-word', `${before}    depth: Mid-Dermis\n`);
  });

  it('every table that the schema names is looked up, but for agents, which have a check of their own', () => {
    const schema = readFileSync('schemas/note.schema.json', 'utf8');
    const named = new Set([...schema.matchAll(/"x-words": "(\w+)"/g)].map(([, name]) => name!));
    assert.deepEqual(
      [...named].filter((name) => !wordTables.has(name)),
      ['agents'],
    );
  });
});

describe('behind a row that can not be read', () => {
  it('nothing is said to be missing in the part that holds it', () => {
    assert.deepEqual(own('visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: chin\n    meth\n'), [
      'yaml/missing-colon',
    ]);
  });

  it('nor in the part above a row that stands askew', () => {
    assert.deepEqual(own(`${before}events:\n  - on: 2026-03-03\n   kind: bleeding\n`), ['yaml/indentation']);
  });

  it('faults elsewhere stay', () => {
    const text = `${before}    closure: {how: none,, layer: skin}\n  - site: chin\n    method: punch\n    foo: 1\n`;
    assert.deepEqual(own(text), ['yaml/syntax', 'shape/unknown-key']);
  });
});
