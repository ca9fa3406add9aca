import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { messageOf } from '../../../src/checks/index.ts';
import { wordTables } from '../../../src/checks/shape/_words.ts';
import { fixed, flags, judge, judgeBy, silent } from '../tester.ts';

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
    flags('shape/unknown-word', `${before}    relation: ⟦lesionel⟧\n`, { severity: 'information' });
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

  it('of a list need no brackets', () => {
    for (const line of [
      'hemostasis: pressure, aluminum chloride',
      'hemostasis: pressure and a suture',
      'hemostasis: heat cautery, then pressure',
      'hemostasis: electrosurgery + pressure',
      'dressing: petrolatum, gauze and tape',
      'specimen: {medium: formalin, tests: H&E and PAS}',
    ])
      silent('shape/unknown-word', `${before}    ${line}\n`);
    flags('shape/unknown-word', `${before}    hemostasis: pressure and ⟦prayer⟧\n`, { severity: 'warning' });
    flags('shape/unknown-word', `${before}    dressing: petrolatum, gauze and ⟦feathers⟧\n`, {
      severity: 'information',
    });
  });

  it('of a list each count for the checks', () => {
    const text = before.replace('{id: C-1}', '{id: C-1, implants: pacemaker}');
    flags(
      'device/electrosurgery',
      `${text}    hemostasis: pressure, then ⟦electrosurgery⟧\n`
        .replace(/⟦(.*)⟧/, '$1')
        .replace('hemostasis: pressure, then electrosurgery', 'hemostasis: ⟦pressure, then electrosurgery⟧'),
    );
    silent('device/electrosurgery', `${text}    hemostasis: pressure, then aluminum chloride\n`);
  });

  it('of a list that share one word are read with it', () => {
    const tests = (text: string, medium: string): string =>
      `${before}    specimen: {medium: ${medium}, tests: "${text}"}\n`;
    for (const text of ['bacterial, fungal and AFB cultures', 'cultures for bacteria, fungus and AFB']) {
      silent('shape/unknown-word', tests(text, 'saline'));
      assert.equal(judgeBy('specimen/wrong-medium', tests(text, 'formalin')).length > 0, true, text);
    }
    for (const text of ['H&E with AFB and GMS stains', 'H&E and stains for AFB and fungus'])
      for (const code of ['shape/unknown-word', 'specimen/wrong-medium'])
        silent(code, tests(text, 'formalin'));
  });

  it('that change nothing about the word beside them are passed over', () => {
    for (const line of [
      'hemostasis: light pressure',
      'method: shave biopsy with a flexible blade',
      'closure: The wound was left to heal by second intention',
      'preparation: povidone-iodine, let dry',
      'depth: to the mid dermis',
      'hemostasis: aluminum chloride, no cautery because of the ICD',
    ])
      silent(
        'shape/unknown-word',
        `${before.replace(/ {4}method: punch\n/, line.startsWith('method') ? '' : '    method: punch\n')}    ${line}\n`,
      );
    silent(
      'shape/unknown-word',
      before.replace('visit:', 'consent: written informed consent obtained\nvisit:'),
    );
    flags('shape/unknown-word', `${before}    hemostasis: light ⟦moonbeam⟧ and pressure\n`, {
      severity: 'warning',
    });
  });

  it('are reported once for each word of a note, and a fix changes each place', () => {
    const text = `${before}    relation: lesionel\n${before.slice(before.indexOf('  - site'))}    relation: lesionel\n`;
    const found = judgeBy('shape/unknown-word', text);
    assert.deepEqual(
      found.map(({ related }) => related.length),
      [1],
    );
    assert.equal(fixed('shape/unknown-word', text, 'lesional'), text.replaceAll('lesionel', 'lesional'));
  });

  it('that nobody knows are as loud as what they may hide', () => {
    for (const line of ['hemostasis: ⟦vaporizing⟧', 'specimen: {medium: ⟦brandy⟧}', 'preparation: ⟦brandy⟧'])
      flags('shape/unknown-word', `${before}    ${line}\n`, { severity: 'warning' });
    for (const line of [
      'depth: ⟦yonder⟧',
      'dressing: ⟦feathers⟧',
      'closure: ⟦feathers⟧',
      'relation: ⟦yonder⟧',
    ])
      flags('shape/unknown-word', `${before}    ${line}\n`, { severity: 'information' });
  });

  it('of a text that is partly understood are named alone', () => {
    const [finding] = flags(
      'shape/unknown-word',
      `${before}    preparation: chlorhexidine in alcohol ⟦by moonlight⟧\n`.replace(
        '⟦by moonlight',
        'by ⟦moonlight',
      ),
      { severity: 'information' },
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
    for (const line of [
      'preparation: chlorhexidine 2% ⟦prayer⟧',
      'hemostasis: aluminum chloride 20% in ⟦something⟧',
      'hemostasis: ⟦20%⟧',
    ])
      flags('shape/unknown-word', `${before}    ${line}\n`);
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
