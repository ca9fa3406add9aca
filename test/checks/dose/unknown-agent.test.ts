import assert from 'node:assert/strict';
import { fixed, flags, silent } from '../tester.ts';
import { note } from './notes.ts';

describe('dose/unknown-agent', () => {
  const of = (agent: string): string => note([`agent: ${agent}, concentration: 1%, volume: 1 mL`]);

  it('offers the nearest name', () => {
    flags('dose/unknown-agent', of('⟦lidocane⟧'), { severity: 'error' });
    assert.ok(fixed('dose/unknown-agent', of('lidocane'), 'lidocaine').includes('agent: lidocaine,'));
    flags('dose/unknown-agent', of('⟦morphine⟧'));
    flags('dose/unknown-agent', of('⟦constructor⟧'));
    flags('dose/unknown-agent', of('⟦__proto__⟧'));
  });

  it('is silent for names, synonyms and what is not known yet', () => {
    for (const agent of ['lidocaine', 'Lignocaine', 'lidocaine hydrochloride', 'amethocaine', '??'])
      silent('dose/unknown-agent', of(agent));
  });

  it('takes none for an agent where something else is said of it', () => {
    flags('dose/unknown-agent', note(['agent: ⟦none⟧, concentration: 1%, volume: 1 mL']));
  });
});
