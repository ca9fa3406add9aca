import assert from 'node:assert/strict';
import { flags, silent } from '../tester.ts';

const note = (volumes: readonly string[], weight = '62 kg'): string =>
  `visit: 2026-03-02
patient: {id: C-1, born: 1961-08-09, weight: ${weight}}
procedures:
  - site: left upper back
    method: punch
    anesthetic:
${volumes.map((volume) => `      - {agent: lidocaine, concentration: 1%, volume: ${volume}}\n`).join('')}`;

describe('dose/over-limit', () => {
  it('flags the injection that takes the visit over the limit, and points at the others', () => {
    const [finding] = flags('dose/over-limit', note(['20 mL', '⟦8 mL⟧']), { severity: 'error' });
    assert.equal(finding?.related.length, 1);
  });

  it('is silent exactly at the limit', () => {
    // US label: 4.5 mg/kg, so 279 mg = 27.9 mL of 1% at 62 kg.
    silent('dose/over-limit', note(['27.9 mL']));
    flags('dose/over-limit', note(['⟦27.91 mL⟧']));
  });
});
