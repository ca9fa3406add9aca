import assert from 'node:assert/strict';
import { messageOf } from '../../../src/checks/index.ts';
import { flags, silent } from '../tester.ts';
import { lidocaine, note } from './notes.ts';

describe('dose/child-without-weight', () => {
  const marked = (age: string): string =>
    note([lidocaine('2 mL')], `id: C-1, age: ${age}`).replace('patient:', '⟦patient⟧:');

  it('is an error under 12 years and a warning under 18', () => {
    flags('dose/child-without-weight', marked('11 years'), { severity: 'error' });
    flags('dose/child-without-weight', marked('12 years'), { severity: 'warning' });
    flags('dose/child-without-weight', marked('17 years'), { severity: 'warning' });
    silent('dose/child-without-weight', note([lidocaine('2 mL')], 'id: C-1, age: 18 years'));
    silent('dose/child-without-weight', note([lidocaine('2 mL')], 'id: C-1, age: 11 years, weight: 40 kg'));
  });

  it('says from which weight on the dose is in order', () => {
    const [finding] = flags('dose/child-without-weight', marked('7 years'));
    assert.match(messageOf(finding!), /lidocaine 20 mg would be within the limit from 6\.7 kg/);
  });

  it('points at a weight that is not known yet, and leaves one that can’t be read to its own finding', () => {
    flags('dose/child-without-weight', note([lidocaine('2 mL')], 'id: C-1, age: 7 years, weight: ⟦??⟧'));
    silent('dose/child-without-weight', note([lidocaine('2 mL')], 'id: C-1, age: 7 years, weight: heavy'));
  });

  it('takes a weight that is said to be unknown for none, and for no slip', () => {
    for (const weight of ['unknown', 'refused', 'not weighed']) {
      const patient = `id: C-1, age: 7 years, weight: ⟦${weight}⟧`;
      flags('dose/child-without-weight', note([lidocaine('2 mL')], patient), { severity: 'error' });
      const adult = note([lidocaine('20 mL')], patient.replace('7 years', '64 years'));
      flags('dose/adult-without-weight', adult);
      silent('quantity/unreadable', adult.replace(/[⟦⟧]/g, ''));
      silent('dose/adult-without-weight', adult.replace(/[⟦⟧]/g, '').replace('20 mL', '2 mL'));
    }
  });

  it('asks for a cream too, and not for a cold spray', () => {
    const patient = 'id: C-1, age: 7 years';
    const cream = note(['agent: lidocaine-prilocaine cream, amount: 1 g'], patient);
    flags('dose/child-without-weight', cream.replace('patient:', '⟦patient⟧:'));
    silent('dose/child-without-weight', note(['agent: vapocoolant spray'], patient));
  });
});
