import assert from 'node:assert/strict';
import { flags, silent } from '../tester.ts';
import { note } from './notes.ts';

describe('creams that are not judged', () => {
  it('without a known maximum are reported, for a child and for an adult', () => {
    const five = (patient: string, amount: string): string =>
      note([`agent: lidocaine cream 5%, amount: ${amount}`], patient);
    flags('dose/cream-not-judged', five('id: C-1, age: 9 years, weight: 30 kg', '⟦2 g⟧'), {
      severity: 'information',
    });
    flags('dose/cream-not-judged', five('id: C-1, age: 40 years, weight: 70 kg', '⟦2 g⟧'), {
      severity: 'information',
    });
  });

  it('whose maximum is an area are reported where no area is written', () => {
    const four = (rest: string): string =>
      note([`agent: lidocaine cream 4%, amount: ${rest}`], 'id: C-1, age: 2 years, weight: 12 kg');
    const [finding] = flags('dose/cream-not-judged', four('⟦90 g⟧'), { severity: 'information' });
    assert.equal(finding?.form, 'area');
    silent('dose/cream-not-judged', four('5 g, area: 50 cm2'));
  });

  it('that are no cream, but an injected agent in g, are reported for adults too', () => {
    const adult = 'id: C-1, age: 40 years, weight: 70 kg';
    flags('dose/cream-not-judged', note(['agent: lidocaine, concentration: 1%, amount: ⟦40 g⟧'], adult));
  });
});
