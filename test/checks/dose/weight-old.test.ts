import { flags, silent } from '../tester.ts';
import { lidocaine, note } from './notes.ts';

describe('dose/weight-old', () => {
  const code = 'dose/weight-old';
  const child = (age: string, weight: string, weighed: string): string =>
    note([lidocaine('0.5 mL')], `id: C-1, age: ${age}, weight: ${weight}, weighed: ${weighed}`);

  it('flags from the day after the span of the age on', () => {
    flags(code, child('7 months', '8 kg', '⟦measured 2026-01-29⟧'), { severity: 'information' });
    silent(code, child('7 months', '8 kg', 'measured 2026-01-30'));
    flags(code, child('5 years', '18 kg', '⟦2025-08-30⟧'));
    silent(code, child('5 years', '18 kg', '2025-08-31'));
  });

  it('flags a weight of more than a year from 12 years on where the dose is half of the limit', () => {
    // 4.5 mg/kg at 66 kg are 297 mg, half of which is 14.85 mL of 1%.
    const adult = (volume: string, weighed: string): string =>
      note([lidocaine(volume)], `id: C-1, age: 40 years, weight: 66 kg, weighed: ${weighed}`);
    flags(code, adult('14.9 mL', '⟦measured 2025-03-01⟧'), { severity: 'information' });
    silent(code, adult('14.9 mL', 'measured 2025-03-02'));
    silent(code, adult('14.8 mL', 'measured 2021-01-01'));
  });

  it('is silent of adults with little, of a weight without a date, and where nothing was given', () => {
    silent(code, child('40 years', '70 kg', 'measured 2021-01-01'));
    silent(code, child('5 years', '18 kg', 'stated'));
    silent(code, note(['agent: none'], 'id: C-1, age: 5 years, weight: 18 kg, weighed: measured 2024-01-01'));
  });
});
