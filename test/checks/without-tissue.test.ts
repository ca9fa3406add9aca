import assert from 'node:assert/strict';
import { judge } from './tester.ts';

/** What destroys without taking tissue, and an injection into a lesion. */
const methods = [
  'cryotherapy',
  'liquid nitrogen',
  'topical destruction',
  'cantharidin',
  'electrodesiccation',
  'electrofulguration',
  'laser',
  'intralesional injection',
];

const note = (method: string, implants = 'none', more = ''): string => `wheal: 1
visit: 2026-03-02 10:05
clinician: K.O.
patient: {id: C-1, born: 1961-08-09, weight: 62 kg, allergies: none, implants: ${implants}}
consent: written
time-out: done
procedures:
  - site: left dorsal hand
    lesion: wart 4 mm
    method: ${method}
    preparation: isopropyl alcohol
    dry: yes
    dressing: none
    complications: none
${method.includes('injection') ? '    injected: {drug: triamcinolone, concentration: 10 mg/mL, volume: 0.2 mL}\n' : ''}${more}aftercare: {given: [spoken], language: en}
`;

const codesOf = (text: string, today = '2026-03-02'): readonly string[] =>
  judge(text, { today }).findings.map(({ code }) => code);

describe('a treatment that takes no tissue', () => {
  for (const method of methods)
    it(`${method}: nothing is asked of specimen, closure or result, today or later`, () => {
      assert.deepEqual(codesOf(note(method)), []);
      assert.deepEqual(codesOf(note(method), '2026-12-01'), []);
    });

  it('keeps the checks of devices where current is used, and only there', () => {
    const withPacemaker = (method: string): boolean =>
      codesOf(note(method, '[{kind: pacemaker, where: left chest}]')).includes('device/electrosurgery');
    for (const method of ['electrodesiccation', 'electrofulguration', 'electrocautery'])
      assert.ok(withPacemaker(method), method);
    for (const method of ['cryotherapy', 'intralesional injection', 'topical destruction'])
      assert.ok(!withPacemaker(method), method);
  });

  it('counts its anesthetic as any other', () => {
    const anesthetic = '    anesthetic: {agent: lidocaine, concentration: 2%, volume: 20 mL}\n';
    for (const method of methods)
      assert.ok(codesOf(note(method, 'none', anesthetic)).includes('dose/over-limit'), method);
  });
});
