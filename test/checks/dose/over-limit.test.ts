import assert from 'node:assert/strict';
import { flags, silent } from '../tester.ts';
import { lidocaine, note, withEpinephrine } from './notes.ts';
import { says } from './_over-limit.ts';

describe('dose/over-limit', () => {
  it('flags the injection that takes the visit over the limit, and points at the others', () => {
    const [finding] = flags(
      'dose/over-limit',
      note([lidocaine('20 mL'), lidocaine('⟦8 mL⟧'), lidocaine('1 mL')]),
      { severity: 'error' },
    );
    assert.equal(finding?.related.length, 2);
  });

  it('begins with by how much, and says what binds and what to do, in 35 words at most', () => {
    says(
      'dose/over-limit',
      note([lidocaine('20 mL'), lidocaine('⟦8 mL⟧')]),
      '1 mg over the limit of 279 mg: 4.5 mg/kg at 62 kg.',
      'Give at most 7.9 mL here beside the rest',
      'stop, watch for seizures and arrhythmia',
    );
    says(
      'dose/over-limit',
      note(['agent: bupivacaine, concentration: 0.25%, volume: ⟦64 mL⟧']),
      '5 mg over the limit of 155 mg: 2.5 mg/kg at 62 kg',
      'Give at most 62 mL here',
    );
    says(
      'dose/over-limit',
      note([lidocaine('27.9 mL'), withEpinephrine('⟦1 mL⟧')]),
      '% over the limits of two anesthetics together. The rest has used them up, give none here',
    );
  });

  it('is silent exactly at the limit', () => {
    // US label: 4.5 mg/kg, so 279 mg = 27.9 mL of 1% at 62 kg.
    silent('dose/over-limit', note([lidocaine('27.9 mL')]));
    flags('dose/over-limit', note([lidocaine('⟦27.91 mL⟧')]));
  });

  it('adds different anesthetics by their shares', () => {
    const bupivacaine = (volume: string): string =>
      `agent: bupivacaine, concentration: 0.25%, volume: ${volume}`;
    silent('dose/over-limit', note([lidocaine('13.9 mL'), bupivacaine('31 mL')]));
    flags('dose/over-limit', note([lidocaine('14 mL'), bupivacaine('⟦31 mL⟧')]));
  });

  it('judges a later day by itself', () => {
    const event = (day: string, volume: string): string =>
      `events:\n  - {on: ${day}, kind: bleeding, anesthetic: {${lidocaine(volume)}}}\n`;
    silent('dose/over-limit', note([lidocaine('20 mL')], undefined, event('2026-03-03', '20 mL')));
    flags('dose/over-limit', note([lidocaine('20 mL')], undefined, event('2026-03-02', '⟦20 mL⟧')));
    says(
      'dose/over-limit',
      note([lidocaine('20 mL')], undefined, event('2026-03-03', '⟦28 mL⟧')),
      '2026-03-03',
    );
  });

  it('flags what is over the cap without a weight, and what is over though another injection is not known yet', () => {
    flags('dose/over-limit', note([lidocaine('⟦30.1 mL⟧')], 'id: C-1, age: 40 years'));
    silent('dose/over-limit', note([lidocaine('30 mL')], 'id: C-1, age: 40 years'));
    flags('dose/over-limit', note([lidocaine('⟦28 mL⟧'), lidocaine('??')]));
  });

  it('holds a child to 3 mg/kg', () => {
    const child = 'id: C-1, age: 7 years, weight: 20 kg';
    silent('dose/over-limit', note([lidocaine('6 mL')], child));
    flags('dose/over-limit', note([lidocaine('⟦6.1 mL⟧')], child));
  });
});
