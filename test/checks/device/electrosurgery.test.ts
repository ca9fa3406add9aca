import assert from 'node:assert/strict';
import type { Severity } from '../../../src/note/tree/finding.ts';
import { checkOf } from '../../../src/checks/index.ts';
import { fixed, flags, judgeBy, silent } from '../tester.ts';
import { note } from './_electrosurgery.ts';

const code = 'device/electrosurgery';

type Verdict = Severity | '-';

/** Heat and bipolar pass: general procedure text and the 2019 survey of cutaneous surgeons. */
const words: readonly (readonly [word: string, current: boolean])[] = [
  ['electrosurgery', true],
  ['monopolar electrosurgery', true],
  ['electrocoagulation', true],
  ['electrofulguration', true],
  ['diathermy', true],
  ['cautery', true],
  ['electrocautery', true],
  ['electrodesiccation', true],
  ['light electrodesiccation of the base', true],
  ['ESU', true],
  ['unipolar', true],
  ['unipolar cautery', true],
  ['electrosurgical', true],
  ['electric cautery', true],
  ['RF ablation', true],
  ['heat cautery', false],
  ['battery cautery', false],
  ['hot wire', false],
  ['bipolar electrosurgery', false],
  ['bipolar cautery', false],
  ['bipolar forceps', false],
  ['chemical cautery', false],
  ['silver nitrate cautery', false],
  ['no cautery', false],
  ['aluminum chloride', false],
  ['pressure', false],
  ['suture', false],
  ['none', false],
  ['??', false],
];

/** Implants, and how grave current is on the left upper back and on the left cheek. */
const devices: readonly (readonly [implants: string, back: Verdict, cheek: Verdict])[] = [
  ['[ICD]', 'error', 'error'],
  ['[{kind: implantable defibrillator, where: left chest}]', 'error', 'error'],
  ['[pacemaker/ICD]', 'error', 'error'],
  ['[deep brain stimulator]', 'error', 'error'],
  ['[spinal cord stimulator]', 'error', 'error'],
  ['[vagus nerve stimulator]', 'error', 'error'],
  ['[sacral neuromodulator]', 'error', 'error'],
  ['[pacemaker]', 'error', 'error'],
  ['[{kind: pacemaker, where: left chest}]', 'warning', 'warning'],
  ['[{kind: pacemaker, where: abdomen}]', 'warning', 'warning'],
  ['[{kind: pacemaker, where: somewhere}]', 'error', 'error'],
  ['[{kind: pacemaker, where: ??}]', 'error', 'error'],
  ['[cochlear implant]', 'information', 'error'],
  ['[loop recorder]', 'information', 'information'],
  ['[insulin pump]', 'information', 'information'],
  ['[hip replacement]', '-', '-'],
  ['[titanium plate, breast implants]', '-', '-'],
  ['[coronary stent]', '-', '-'],
  ['[no pacemaker]', '-', '-'],
  ['[pacemaker removed in 2020]', '-', '-'],
  ['[pace maker]', 'error', 'error'],
  ['[CIED]', 'error', 'error'],
  ['[implanted heart device]', 'error', 'error'],
  ['["pacemaker removed, ICD placed 2021"]', 'error', 'error'],
  ['["ICD removed, leads in place"]', 'error', 'error'],
  ['[pacemaker not removed]', 'error', 'error'],
  ['[ICD to be removed in May]', 'error', 'error'],
  ['none', '-', '-'],
  ['unknown', '-', '-'],
  ['??', '-', '-'],
];

describe(code, () => {
  for (const [word, current] of words)
    it(`${word} ${current ? 'counts as current' : 'passes'}`, () => {
      if (current) flags(code, note('[ICD]', `[pressure, ⟦${word}⟧]`), { severity: 'error' });
      else silent(code, note('[ICD]', `[pressure, ${word}]`));
    });

  for (const [implants, back, cheek] of devices)
    it(`${implants}: ${back} on the back, ${cheek} on the cheek`, () => {
      for (const [site, verdict] of [
        ['left upper back', back],
        ['left cheek', cheek],
      ] as const) {
        if (verdict === '-') silent(code, note(implants, 'electrosurgery', site));
        else flags(code, note(implants, '⟦electrosurgery⟧', site), { severity: verdict });
      }
    });

  for (const [where, site, severity] of [
    ['left chest', 'left chest', 'error'],
    ['left chest', 'right chest', 'error'],
    ['left chest', 'sternum', 'error'],
    ['left chest', 'left shoulder', 'error'],
    ['left chest', 'right shoulder', 'warning'],
    ['left chest', 'left axilla', 'error'],
    ['left chest', 'right lateral neck', 'error'],
    ['left infraclavicular', 'left neck', 'error'],
    ['left subclavicular pocket', 'left calf', 'warning'],
    ['right chest', 'left forearm', 'warning'],
    ['left upper quadrant of the abdomen', 'left abdomen', 'error'],
    ['left abdomen', 'left calf', 'warning'],
    ['left chest', 'a place nobody knows', 'error'],
  ] as const)
    it(`pacemaker in the ${where}, site ${site}: ${severity}`, () => {
      flags(code, note(`[{kind: pacemaker, where: ${where}}]`, '⟦electrosurgery⟧', site), { severity });
    });

  it('names the device beside it, and the gravest of several', () => {
    const text = note('[{kind: pacemaker, where: left chest}, DBS]', 'electrosurgery');
    const [finding] = judgeBy(code, text);
    assert.equal(finding?.severity, 'error');
    assert.equal(finding.args['device'], 'deep brain stimulator');
    assert.deepEqual(
      finding.related.map(({ start, end }) => text.slice(start, end)),
      ['DBS', 'pacemaker'],
    );
  });

  it('says more where the patient depends on the pacemaker', () => {
    const [finding] = flags(
      code,
      note('[{kind: pacemaker, where: left chest, dependent: yes}]', '⟦electrosurgery⟧'),
    );
    assert.equal(finding?.form, 'farDependent');
  });

  it('finds a device that stands among the conditions', () => {
    const by = (conditions: string, implants = 'none'): string =>
      note(`${implants}, conditions: [${conditions}]`, 'electrosurgery');
    const told = (conditions: string, implants?: string): readonly string[] =>
      judgeBy(code, by(conditions, implants)).map(({ severity }) => severity);
    assert.deepEqual(told('pacemaker'), ['error']);
    assert.deepEqual(told('heart block with pacemaker'), ['error']);
    assert.deepEqual(told('defibrillator since 2019'), ['error']);
    assert.deepEqual(told('DBS for Parkinson'), ['error']);
    // What `implants` says of the place counts for the same device.
    assert.deepEqual(told('pacemaker', '[{kind: pacemaker, where: left chest}]'), ['warning']);
    for (const other of ['pacemaker removed', 'no pacemaker', 'ICD of the hands', 'psoriasis', 'none'])
      assert.deepEqual(told(other), [], other);
  });

  it('finds current in method and instrument', () => {
    const by = (line: string): string =>
      `visit: 2026-03-02\npatient: {id: C-1, implants: [ICD]}\nprocedures:\n  - site: left cheek\n    ${line}\n`;
    flags(code, by('method: ⟦electrodesiccation and curettage⟧'), { severity: 'error' });
    flags(code, by('method: ⟦shave with electrodesiccation⟧'), { severity: 'error' });
    flags(code, by('instrument: ⟦electrosurgical unit⟧'), { severity: 'error' });
    silent(code, by('{method: ED&C, hemostasis: heat cautery}'.slice(1, -1).replace(', ', '\n    ')));
    silent(code, by('method: curettage'));
  });

  it('offers for a word of both meanings to say which, as a record fix and never as the sure one', () => {
    const text = note('[ICD]', 'electrocautery');
    assert.equal(fixed(code, text, 'heat cautery'), note('[ICD]', 'heat cautery'));
    assert.equal(fixed(code, text, 'electrosurgery'), note('[ICD]', 'electrosurgery'));
    const [finding] = judgeBy(code, text);
    const fixes = (finding && checkOf(code)?.fix?.({ text, tables: undefined as never }, finding)) ?? [];
    assert.deepEqual(
      fixes.map(({ kind, sure }) => ({ kind, sure })),
      [
        { kind: 'record', sure: false },
        { kind: 'record', sure: false },
      ],
    );
  });

  it('offers no fix where the word is clear', () => {
    const text = note('[ICD]', 'electrosurgery');
    const [finding] = judgeBy(code, text);
    assert.deepEqual(finding && checkOf(code)?.fix?.({ text, tables: undefined as never }, finding), []);
  });
});

describe('current that is told of outside of hemostasis', () => {
  const event = (action: string, more = ''): string =>
    `${note('[{kind: pacemaker, where: left chest}]', 'pressure', 'left upper back', more)}events:\n  - {on: 2026-03-03, kind: bleeding, action: "${action}", outcome: stopped}\n`;

  it('is judged in an event, at the site that the event concerns', () => {
    flags(code, event('bleeding stopped with ⟦electrocautery⟧'), { severity: 'warning' });
    const two = '  - {site: left chest, method: punch, specimen: {label: B}}\n';
    flags(code, event('⟦electrosurgery⟧ of the edge', two), { severity: 'error' });
    const of = (which: string): string =>
      event('⟦electrosurgery⟧', two).replace('kind: bleeding', `kind: bleeding, procedure: ${which}`);
    flags(code, of('B'), { severity: 'error' });
    flags(code, of('1'), { severity: 'warning' });
  });

  it('is judged in complications, once for a procedure', () => {
    const told = (hemostasis: string, complications: string): string =>
      note('[ICD]', hemostasis, 'left upper back', `    complications: ${complications}\n`);
    flags(code, told('pressure', 'brisk bleeding, stopped by ⟦electrocoagulation⟧'), { severity: 'error' });
    flags(code, told('⟦electrosurgery⟧', 'bleeding, more electrosurgery'));
    silent(code, told('pressure', 'none'));
  });

  it('is none where it was not used', () => {
    for (const action of [
      'no cautery, pressure held',
      'told to avoid electrocautery because of the pacemaker',
      'heat cautery',
      'bipolar forceps',
      'pressure for 20 minutes',
    ])
      silent(code, event(action));
  });

  it('meets a device that only remarks or medicines tell of', () => {
    flags(code, note('none', '⟦electrosurgery⟧', 'left upper back', '    remarks: has a pacemaker\n'), {
      severity: 'error',
    });
    flags(code, note('none, medications: [pacemaker]', '⟦electrosurgery⟧'), { severity: 'error' });
    silent(code, note('none', 'electrosurgery', 'left upper back', '    remarks: no pacemaker\n'));
    silent(code, note('none', 'electrosurgery', 'left upper back', '    remarks: asked about work\n'));
  });

  it('asks for implants', () => {
    flags(
      'device/implants-not-asked',
      event('⟦cautery⟧').replace(', implants: [{kind: pacemaker, where: left chest}]', ''),
    );
  });

  it('counts a device that is named in passing, where the lesion is or among the allergies', () => {
    const current = (patient: string, procedure: string): string =>
      `visit: 2026-03-02\npatient: {id: C-1${patient}}\nprocedures:\n  - method: shave\n${procedure}    hemostasis: ⟦electrosurgery⟧\n`;
    flags(code, current(', allergies: [penicillin, pacemaker]', '    site: left cheek\n'), {
      severity: 'error',
    });
    for (const place of [
      'site: left chest, above the pacemaker',
      'site: left chest\n    landmarks: 3 cm below the ICD',
      'site: left chest\n    question: "BCC? patient has a pacemaker"',
    ])
      flags(code, current('', `    ${place}\n`), { severity: 'error' });
    const none = current('', '    site: left chest\n    question: BCC, no pacemaker or ICD\n');
    silent(code, none.replace(/[⟦⟧]/g, ''));
  });
});
