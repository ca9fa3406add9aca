import { flags, silent } from '../tester.ts';
import { cream, lidocaine, note } from './notes.ts';

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

  it('asks for the age under 50 kg with a cream too', () => {
    flags('dose/cannot-judge', cream('amount: 5 g', 'id: C-1, weight: ⟦8 kg⟧'), { severity: 'error' });
    silent('dose/cannot-judge', cream('amount: 5 g', 'id: C-1, weight: 60 kg'));
  });
});
