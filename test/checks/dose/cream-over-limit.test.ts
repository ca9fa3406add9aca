import { flags, silent } from '../tester.ts';
import { cream, note } from './notes.ts';

describe('creams over their limit', () => {
  it('are held to amount, area and time of their own line of the table', () => {
    // US label, table by age and weight: 3 to 12 months and over 5 kg: 2 g, 20 cm², 4 hours.
    const severity = 'warning';
    silent('dose/cream-over-limit', cream('amount: 2 g, area: 20 cm2, on: 09:00, off: 13:00'));
    flags('dose/cream-over-limit', cream('amount: ⟦2.1 g⟧, area: 20 cm2, on: 09:00, off: 13:00'), {
      severity,
    });
    flags('dose/cream-over-limit', cream('amount: 2 g, area: ⟦21 cm2⟧, on: 09:00, off: 13:00'), { severity });
    flags('dose/cream-over-limit', cream('amount: 2 g, area: 20 cm2, on: 09:00, off: ⟦13:01⟧'), { severity });
  });

  it('are held to one hour in the smallest, and the longest of several applications counts', () => {
    // US label, table by age and weight: up to 3 months or 5 kg: 1 hour.
    const small = 'id: C-1, age: 2 months, weight: 4.5 kg';
    silent('dose/cream-over-limit', cream('amount: 1 g, on: 09:00, off: 10:00', small));
    flags('dose/cream-over-limit', cream('amount: 1 g, on: 09:00, off: ⟦10:01⟧', small), {
      severity: 'warning',
    });
    silent('dose/cream-over-limit', cream('amount: 1 g, on: 09:00', small));
    const half = 'agent: lidocaine-prilocaine cream, amount: 0.5 g';
    const two = (first: string, second: string): string =>
      note([`${half}, on: 08:00, off: ${first}`, `${half}, on: 09:00, off: ${second}`], small);
    silent('dose/cream-over-limit', two('09:00', '10:00'));
    flags('dose/cream-over-limit', two('⟦09:01⟧', '10:00'));
    flags('dose/cream-over-limit', two('09:00', '⟦10:01⟧'));
  });

  it('stay in the line of the weight where the age is reached and the weight is not', () => {
    const of7 = (kg: number, grams: string): string =>
      cream(`amount: ${grams}`, `id: C-1, age: 7 years, weight: ${kg} kg`);
    // US label, the same table: 7 to 12 years and more than 20 kg; exactly 20 kg is not more.
    silent('dose/cream-over-limit', of7(20.1, '20 g'));
    flags('dose/cream-over-limit', of7(20, '⟦11 g⟧'));
    silent('dose/cream-over-limit', of7(20, '10 g'));
    flags('dose/cream-over-limit', cream('amount: ⟦1.1 g⟧', 'id: C-1, age: 2 months, weight: 5.5 kg'));
  });

  it('are information where a value is only the most that was studied', () => {
    flags('dose/cream-over-limit', cream('amount: ⟦61 g⟧', 'id: C-1, age: 40 years, weight: 70 kg'), {
      severity: 'information',
    });
  });

  it('of lidocaine 4%: 100 cm² up to 20 kg, and 1 g for 1 or 4 hours in the first year', () => {
    const four = (rest: string, patient = 'id: C-1, age: 4 years, weight: 20 kg'): string =>
      note([`agent: lidocaine cream 4%, ${rest}`], patient);
    flags('dose/cream-over-limit', four('amount: 5 g, area: ⟦101 cm2⟧'), { severity: 'warning' });
    silent('dose/cream-over-limit', four('amount: 5 g, area: 100 cm2, on: 09:00, off: 14:00'));
    flags('dose/cream-over-limit', four('amount: 5 g, area: 100 cm2, on: 09:00, off: ⟦14:01⟧'));
    silent(
      'dose/cream-over-limit',
      four('amount: 5 g, area: 500 cm2', 'id: C-1, age: 8 years, weight: 26 kg'),
    );
    const infant = 'id: C-1, age: 5 months, weight: 7 kg';
    silent('dose/cream-over-limit', four('amount: 1 g, on: 09:00, off: 13:00', infant));
    flags('dose/cream-over-limit', four('amount: ⟦1.1 g⟧', infant));
    const younger = 'id: C-1, age: 2 months, weight: 5 kg';
    flags('dose/cream-over-limit', four('amount: 1 g, on: 09:00, off: ⟦10:01⟧', younger));
  });

  it('of tetracaine gel: 1 g under 5 years, then 5 g at one time', () => {
    const gel = (amount: string, patient: string): string =>
      note([`agent: tetracaine gel, amount: ${amount}`], patient);
    const child = 'id: C-1, age: 59 months, weight: 18 kg';
    silent('dose/cream-over-limit', gel('1 g', child));
    flags('dose/cream-over-limit', gel('⟦1.5 g⟧', child), { severity: 'warning' });
    silent('dose/cream-over-limit', gel('5 g', 'id: C-1, age: 60 months, weight: 18 kg'));
    flags('dose/cream-over-limit', gel('⟦5.1 g⟧', 'id: C-1, age: 40 years, weight: 70 kg'));
  });

  it('of lidocaine ointment 5%: 5 g at one time, and 4.5 mg/kg for a child', () => {
    const ointment = (amount: string, patient: string): string =>
      note([`agent: lidocaine ointment, amount: ${amount}`], patient);
    silent('dose/cream-over-limit', ointment('5 g', 'id: C-1, age: 40 years, weight: 70 kg'));
    flags('dose/cream-over-limit', ointment('⟦5.1 g⟧', 'id: C-1, age: 40 years, weight: 70 kg'));
    // 4.5 mg/kg × 20 kg = 90 mg, 1.8 g of 50 mg/g.
    silent('dose/cream-over-limit', ointment('1.8 g', 'id: C-1, age: 6 years, weight: 20 kg'));
    flags('dose/cream-over-limit', ointment('⟦1.9 g⟧', 'id: C-1, age: 6 years, weight: 20 kg'));
  });

  it('left on past midnight count with the whole time', () => {
    flags('dose/cream-over-limit', cream('amount: 2 g, on: 23:00, off: ⟦06:00⟧'), { severity: 'warning' });
    silent('dose/cream-over-limit', cream('amount: 2 g, on: 23:00, off: 01:00'));
  });
});
