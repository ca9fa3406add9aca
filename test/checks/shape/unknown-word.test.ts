import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { wordTables } from '../../../src/checks/shape/_words.ts';
import { fixed, flags, judge, judgeBy, silent } from '../tester.ts';
import { before } from './_shape.ts';

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
