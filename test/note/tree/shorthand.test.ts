import assert from 'node:assert/strict';
import { flags, judge, silent } from '../../checks/tester.ts';
import { readNote } from '../../../src/note/read.ts';

const note = (patient: string): string =>
  `visit: 2026-03-02\npatient: {id: C-20417, born: 1961-08-09, weight: 62 kg, ${patient}}\nprocedures:\n  - site: left upper back\n    method: shave\n    anesthetic: {agent: lidocaine, concentration: 1%, volume: 1 mL}\n    hemostasis: electrosurgery\n`;

describe('maps that name things by their keys', () => {
  it('are one entry for each key, at the places of their words', () => {
    const text = note(
      'allergies: {latex: itching, "penicillin": hives}, implants: [{pacemaker: left chest}]',
    );
    const { allergies = [], implants = [] } = readNote(text).value!.patient!;
    const words = [
      ...allergies.flatMap(({ to, reaction }) => [to, reaction]),
      ...implants.flatMap(({ kind, where }) => [kind, where]),
    ];
    assert.deepEqual(
      words.map((leaf) => leaf!.text),
      ['latex', 'itching', 'penicillin', 'hives', 'pacemaker', 'left chest'],
    );
    assert.equal(text.slice(words[0]!.start, words[0]!.end), 'latex');
  });

  it('are no fault of form', () => {
    for (const patient of [
      'allergies: [{lidocaine: hives}]',
      'allergies: {latex: itching, penicillin: [hives, rash]}',
      'implants: {hip: left 2014}',
    ])
      for (const { code } of judge(note(patient)).findings)
        assert.ok(!code.startsWith('shape/'), `${patient}: ${code}`);
    assert.ok(
      judge(note('allergies: {lidocaine: ??}')).findings.some(({ code }) => code === 'shape/pending'),
    );
    for (const patient of ['allergies: {substance: latex}', 'allergies: {to: latex, severity: mild}'])
      assert.ok(
        judge(note(patient)).findings.some(({ code }) => code === 'shape/unknown-key'),
        patient,
      );
  });

  it('are judged by what their values say', () => {
    flags(
      'allergy/agent',
      note('allergies: [{lidocaine: hives}]').replace('agent: lidocaine', 'agent: ⟦lidocaine⟧'),
      {
        severity: 'error',
      },
    );
    flags(
      'allergy/agent',
      note('allergies: {lidocaine: "?"}').replace('agent: lidocaine', 'agent: ⟦lidocaine⟧'),
      {
        severity: 'warning',
      },
    );
    for (const said of ['tolerated', 'no', 'ok', 'not allergic'])
      silent('allergy/agent', note(`allergies: {lidocaine: ${said}}`));
    const current = (implants: string): string =>
      note(`implants: ${implants}`).replace('hemostasis: electrosurgery', 'hemostasis: ⟦electrosurgery⟧');
    flags('device/electrosurgery', current('{ICD: left chest}'), { severity: 'error' });
    flags('device/electrosurgery', current('{ICD: unsure}'), { severity: 'warning' });
    for (const said of ['no', 'none', 'removed 2019', 'never'])
      silent('device/electrosurgery', note(`implants: {ICD: ${said}}`));
  });
});
