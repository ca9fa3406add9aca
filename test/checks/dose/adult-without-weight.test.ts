import assert from 'node:assert/strict';
import { messageOf } from '../../../src/checks/index.ts';
import { flags, silent } from '../tester.ts';
import { lidocaine, note } from './notes.ts';

describe('dose/adult-without-weight', () => {
  it('asks once the dose is too much for 40 kg', () => {
    // 4.5 mg/kg × 40 kg = 180 mg = 18 mL of 1%.
    const patient = 'id: C-1, age: 64 years';
    silent('dose/adult-without-weight', note([lidocaine('18 mL')], patient));
    const [finding] = flags(
      'dose/adult-without-weight',
      note([lidocaine('20 mL')], patient).replace('patient:', '⟦patient⟧:'),
      { severity: 'warning' },
    );
    assert.match(
      messageOf(finding!),
      /lidocaine 200 mg is within the limit only from a body weight of 44\.5 kg/,
    );
  });

  it('is silent with a weight, past the cap, and for a child', () => {
    silent('dose/adult-without-weight', note([lidocaine('20 mL')]));
    silent('dose/adult-without-weight', note([lidocaine('31 mL')], 'id: C-1, age: 64 years'));
    silent('dose/adult-without-weight', note([lidocaine('20 mL')], 'id: C-1, age: 14 years'));
  });

  it('says that an adult is assumed where no age is written', () => {
    const [finding] = flags(
      'dose/adult-without-weight',
      note([lidocaine('20 mL')], 'id: C-1').replace('patient:', '⟦patient⟧:'),
    );
    assert.match(messageOf(finding!), /neither weight nor age/);
  });
});
