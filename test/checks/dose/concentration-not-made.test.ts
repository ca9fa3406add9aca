import assert from 'node:assert/strict';
import { messageOf } from '../../../src/checks/index.ts';
import { fixed, flags, silent } from '../tester.ts';
import { note } from './notes.ts';

describe('dose/concentration-not-made', () => {
  const of = (agent: string, strength: string): string =>
    note([`agent: ${agent}, concentration: ${strength}, volume: 1 mL`]);

  it('catches percent for mg/mL and the other way round', () => {
    const [ten] = flags('dose/concentration-not-made', of('lidocaine', '⟦10%⟧'), { severity: 'warning' });
    assert.match(messageOf(ten!), /Was it 10 mg\/mL\?/);
    const [one] = flags('dose/concentration-not-made', of('lidocaine', '⟦1 mg/mL⟧'), { severity: 'warning' });
    assert.match(messageOf(one!), /Was it 1%\?/);
    assert.ok(
      fixed('dose/concentration-not-made', of('lidocaine', '10%'), 'correct the record').includes(
        'concentration: 10 mg/mL',
      ),
    );
  });

  it('flags strengths between those that are made, and tells of dilutions', () => {
    flags('dose/concentration-not-made', of('lidocaine', '⟦1.2%⟧'), { severity: 'warning' });
    flags('dose/concentration-not-made', of('bupivacaine', '⟦1%⟧'), { severity: 'warning' });
    flags('dose/concentration-not-made', of('lidocaine', '⟦0.25%⟧'), { severity: 'information' });
    // The strengths of levobupivacaine are known from memory alone.
    flags('dose/concentration-not-made', of('levobupivacaine', '⟦4%⟧'), { severity: 'information' });
    flags('dose/concentration-not-made', of('procaine', '⟦4%⟧'), { severity: 'warning' });
  });

  it('is silent for every strength that is made', () => {
    for (const strength of ['0.5%', '1%', '1.5%', '2%', '10 mg/mL', '20 mg/mL'])
      silent('dose/concentration-not-made', of('lidocaine', strength));
    for (const strength of ['0.25%', '0.5%', '2.5 mg/mL'])
      silent('dose/concentration-not-made', of('bupivacaine', strength));
    silent('dose/concentration-not-made', note(['agent: lidocaine, concentration: 4%, amount: 2 g']));
    silent('dose/concentration-not-made', of('lidokaine', '10%'));
  });
});
