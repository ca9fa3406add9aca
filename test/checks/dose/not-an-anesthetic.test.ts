import assert from 'node:assert/strict';
import { flags, silent } from '../tester.ts';
import { lidocaine, note } from './notes.ts';

describe('dose/not-an-anesthetic', () => {
  const code = 'dose/not-an-anesthetic';
  const given = 'agent: ⟦diphenhydramine⟧, concentration: 1%, volume: 1 mL';

  it('flags diphenhydramine, and says so of end arteries', () => {
    const [finding] = flags(code, note([given]), { severity: 'warning' });
    assert.equal(finding?.form, 'main');
    for (const site of ['right ring finger', 'nasal tip', 'left helix']) {
      const [there] = flags(code, note([given]).replace('left upper back', site), { severity: 'warning' });
      assert.equal(there?.form, 'end-artery');
    }
  });

  it('is information where the list of allergies names an anesthetic, except at end arteries', () => {
    const patient = 'id: C-1, born: 1961-08-09, weight: 62 kg, allergies: [lidocaine]';
    flags(code, note([given], patient), { severity: 'information' });
    flags(code, note([given], patient).replace('left upper back', 'right ring finger'), {
      severity: 'warning',
    });
  });

  it('is silent for anesthetics', () => {
    silent(code, note([lidocaine('1 mL')]));
    silent(code, note(['agent: bacteriostatic saline, volume: 1 mL']));
  });
});
