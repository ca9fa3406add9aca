import assert from 'node:assert/strict';
import { flags, judgeBy, silent } from '../tester.ts';
import { lidocaine, note, withEpinephrine } from './notes.ts';
import { person, marked, at } from './_caution-findings.ts';

describe('dose/epinephrine-end-artery', () => {
  const code = 'dose/epinephrine-end-artery';

  it('flags a digit with Raynaud or vascular disease', () => {
    for (const condition of [
      'Raynaud phenomenon',
      "Raynaud's",
      'peripheral arterial disease',
      'systemic sclerosis',
    ])
      flags(code, at('right ring finger', note([marked('1 mL')], person(`conditions: ["${condition}"]`))), {
        severity: 'warning',
      });
  });

  it('is silent on a healthy digit, on a plain solution and elsewhere on the body', () => {
    const raynaud = person('conditions: [Raynaud phenomenon]');
    silent(code, at('right ring finger', note([withEpinephrine('1 mL')])));
    silent(code, at('right ring finger', note([lidocaine('1 mL')], raynaud)));
    silent(code, note([withEpinephrine('1 mL')], raynaud));
  });

  it('takes vascular disease for one of nose, ear and penis too, and Raynaud for one of nose and ear', () => {
    for (const site of ['nasal tip', 'left helix', 'penile shaft'])
      flags(code, at(site, note([marked('1 mL')], person('conditions: [PAD]'))), { severity: 'warning' });
    flags(code, at('nasal tip', note([marked('1 mL')], person('conditions: [Raynaud]'))));
    silent(code, at('penile shaft', note([withEpinephrine('1 mL')], person('conditions: [Raynaud]'))));
    silent(code, at('left upper arm', note([withEpinephrine('1 mL')], person('conditions: [PAD]'))));
  });

  it('counts an injection for the whole visit once', () => {
    flags(
      code,
      `visit: 2026-03-02\npatient: {id: C-1, conditions: [Raynaud]}\nanesthetic: {${marked('2 mL')}}\n` +
        'procedures:\n  - {site: right thumb, method: punch}\n  - {site: left thumb, method: punch}\n',
    );
  });

  it('takes an answer after a colon for what it says', () => {
    const finger = (conditions: string): string =>
      at('left index finger', note([withEpinephrine('1 mL')], person(`conditions: ["${conditions}"]`)));
    for (const text of ['Raynaud: denies', 'Raynaud: no, diabetes: no'])
      silent('dose/epinephrine-end-artery', finger(text));
    assert.equal(judgeBy('dose/epinephrine-end-artery', finger('Raynaud: yes')).length, 1);
  });
});
