import assert from 'node:assert/strict';
import { messageOf } from '../../../src/checks/index.ts';
import { flags, silent } from '../tester.ts';
import { lidocaine, note } from './notes.ts';

describe('dose/cannot-judge', () => {
  const severity = 'error';

  it('asks for the age under 50 kg', () => {
    flags('dose/cannot-judge', note([lidocaine('1 mL')], 'id: C-1, weight: ⟦49.9 kg⟧'), { severity });
    silent('dose/cannot-judge', note([lidocaine('1 mL')], 'id: C-1, weight: 50 kg'));
    silent('dose/cannot-judge', note([lidocaine('1 mL')], 'id: C-1, weight: 12 kg, age: 2 years'));
    silent('dose/cannot-judge', note(['agent: vapocoolant spray'], 'id: C-1, weight: 12 kg'));
  });

  it('says that no limit is known for such a patient', () => {
    const articaine = 'concentration: 4%, epinephrine: "1:100,000", volume: 1 mL';
    flags(
      'dose/cannot-judge',
      note([`agent: ⟦articaine⟧, ${articaine}`], 'id: C-1, weight: 15 kg, age: 3 years'),
      { severity },
    );
    silent(
      'dose/cannot-judge',
      note([`agent: articaine, ${articaine}`], 'id: C-1, weight: 15 kg, age: 4 years'),
    );
    flags('dose/cannot-judge', note(['agent: ⟦articaine⟧, concentration: 4%, volume: 1 mL']), { severity });
  });

  it('leaves to others what others say', () => {
    silent('dose/cannot-judge', note(['agent: lidocaine, concentration: strong, volume: 1 mL']));
    silent('dose/cannot-judge', note(['agent: lidocaine, concentration: 1%, volume: ??']));
    silent('dose/cannot-judge', note(['agent: lidocane, concentration: 1%, volume: 1 mL']));
    silent('dose/cannot-judge', note([lidocaine('1 mL')], 'id: C-1, age: 3 years'));
  });
});

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
    assert.match(messageOf(finding!), /lidocaine 20 mg would be in order from 6.7 kg on/);
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
    assert.match(messageOf(finding!), /lidocaine 200 mg is in order from a body weight of 44.5 kg on/);
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
