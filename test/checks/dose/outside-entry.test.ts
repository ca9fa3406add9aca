import assert from 'node:assert/strict';
import { check } from '../../../src/checks/dose/outside-entry.ts';
import { applyEdits } from '../../../src/note/tree/edit.ts';
import { referenceTables } from '../../../src/practice/tables.ts';
import { flags, judgeBy, silent } from '../tester.ts';

const code = 'dose/outside-entry';
const entry = '{agent: lidocaine, concentration: 1%, volume: 1.5 mL}';
const note = (remarks: string, more = '', anesthetic = entry): string =>
  `visit: 2026-03-02\npatient: {id: C-20417, born: 1961-08-09, weight: 62 kg}\nprocedures:\n  - site: left upper back\n    method: punch\n    anesthetic: ${anesthetic}\n    remarks: ${remarks}\n${more}`;
const event = (line: string): string => `events:\n  - on: 2026-03-03\n    kind: bleeding\n    ${line}\n`;

describe(code, () => {
  for (const text of [
    '⟦2 mL more of 1% lidocaine⟧',
    '⟦needed extra 3 mL lidocaine⟧',
    'no epi; ⟦2 extra mL plain lido⟧',
    '⟦topped up w 2cc⟧',
    '⟦1 mL bupivacaine .5% added at end⟧',
    '⟦numbing cream (lidocaine 4%, 5 g) put on by patient⟧',
    '⟦another 1.5 mL of lidocaine⟧',
    '⟦gave 2 ml more lidocane⟧',
    '⟦patient got 45 ml total of the 1%⟧',
    '⟦30 of the 1% later⟧',
    '⟦numbed w 12 of the two percent⟧',
    '⟦2 m,L more of 1% lidocaine⟧',
    '⟦2% 20ml additional⟧',
    '⟦used 40 cc 1% lidocaine, remaining tissue discarded⟧',
  ])
    it(`finds ${text}`, () => {
      flags(code, note(`"${text}"`), { severity: 'error' });
    });

  for (const text of [
    'cleaned with 10 mL saline',
    'blood loss 1 mL',
    'lidocaine 1.5 mL as charted',
    'no additional local needed',
    '2 mL lidocaine wasted',
    'wound 3 mm',
    '5 mL of 3% hydrogen peroxide to clean',
    'chlorhexidine 2% 20 mL used',
    'drew up 5 mL lidocaine, 2 mL wasted',
    '2 of 3 lesions are smaller',
    '10 of the 20 sites, 30% healed',
    'EBL < 2 cc, local worked well',
  ])
    it(`is silent on ${text}`, () => {
      silent(code, note(`"${text}"`));
    });

  it('finds what was given later, also where it is as much as at the visit', () => {
    flags(code, note('none', event('action: "⟦anesthetized w/ 1.5 mL lidocaine 1%⟧"')), {
      severity: 'error',
    });
    flags(code, note('none', event('injected: {drug: ⟦lidocaine⟧, volume: 3 mL}')), { severity: 'error' });
    silent(code, note('none', event('injected: {drug: triamcinolone, volume: 0.2 mL}')));
    flags(code, note('none', event('injected: {drug: ⟦triamcinolone with 1 mL lidocaine 1%⟧}')));
    silent(
      code,
      note(
        'none',
        event('injected: {drug: triamcinolone with lidocaine}\n    anesthetic: 1 mL lidocaine 1%'),
      ),
    );
    silent(code, note('none', event('injected: {drug: triamcinolone without lidocaine}')));
    flags(code, `${note('none')}    injected: ⟦lidocaine 1% 2 mL⟧\n`);
    silent(code, `${note('none')}    injected: triamcinolone in lidocaine\n`);
    flags(code, `${note('none')}remarks: [⟦3 mL lidocaine by the resident⟧]\n`);
  });

  it('looks into every text where one may stand', () => {
    const beside = (line: string): string => note('none').replace('    method', `    ${line}\n    method`);
    for (const line of [
      'hemostasis: [pressure, ⟦2 mL lidocaine with epi⟧]',
      'landmarks: ⟦3 mL lidocaine field block around it⟧',
      'question: BCC; ⟦2 mL lidocaine added⟧',
      'preparation: [chlorhexidine, ⟦4 mL lidocaine⟧]',
    ])
      flags(code, beside(line), { severity: 'error' });
    flags(code, note('none').replace('62 kg}', '62 kg, medications: [⟦lidocaine 3 mL at home⟧]}'));
    silent(code, beside('hemostasis: [pressure, aluminum chloride 2 mL]'));
    silent(code, note('none').replace('62 kg}', '62 kg, medications: [lidocaine patch 5%]}'));
  });

  it('begins an entry with the words, and only where its place is sure', () => {
    const fixed = (text: string): string | undefined => {
      const [finding] = judgeBy(code, text);
      assert.ok(finding);
      const [fix] = check.fix!({ text, tables: referenceTables }, finding);
      return fix && applyEdits(text, fix.edits);
    };
    const remark = '2 mL lidocaine 1% more';
    assert.equal(fixed(note(remark)), note(remark, '', `[${entry}, "2 mL lidocaine 1%"]`));
    assert.equal(
      fixed(note(remark, '', `\n      - ${entry}`)),
      note(remark, '', `\n      - ${entry}\n      - "2 mL lidocaine 1%"`),
    );
    const onTop = '2 mL more of 1% lidocaine';
    assert.equal(fixed(note(onTop)), note(onTop, '', `[${entry}, "2 mL of 1% lidocaine"]`));
    const later = event('action: 2 mL lidocaine 1%');
    assert.equal(
      fixed(note('none', later)),
      note('none', `${later.trimEnd()}\n    anesthetic: "2 mL lidocaine 1%"\n`),
    );
    assert.equal(fixed(`${note('none')}remarks: 3 mL lidocaine\n`), undefined);
  });
});

describe('a drug under injected', () => {
  it('counts as what it is for the allergies', () => {
    const text = note('none', event('injected: {drug: ⟦lidocaine⟧, volume: 3 mL}'), 'none').replace(
      'weight: 62 kg',
      'weight: 62 kg, allergies: [lidocaine]',
    );
    flags('allergy/agent', text, { severity: 'error' });
  });
});
