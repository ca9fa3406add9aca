import assert from 'node:assert/strict';
import { readPractice } from '../../../src/note/read.ts';
import { tablesOf } from '../../../src/practice/tables.ts';
import { flags, judge, silent } from '../tester.ts';
import { lidocaine, note } from './notes.ts';

describe('an anesthetic that was not given', () => {
  it('is no injection, as a map or as a word', () => {
    for (const none of ['{agent: none}', 'none', '{agent: No anesthetic}', '[{agent: none}]'])
      for (const code of [
        'dose/unknown-agent',
        'dose/concentration-missing',
        'dose/volume-missing',
        'dose/agent-missing',
      ])
        silent(
          code,
          `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: chin\n    method: shave\n    anesthetic: ${none}\n`,
        );
  });

  it('is one where something else is said of it', () => {
    flags('dose/unknown-agent', note(['agent: ⟦none⟧, concentration: 1%, volume: 1 mL']));
  });
});

describe('what an injection lacks', () => {
  it('flags agent, strength and volume at the entry', () => {
    const severity = 'error';
    flags('dose/agent-missing', note(['⟦concentration⟧: 1%, volume: 1 mL']), { severity });
    flags('dose/concentration-missing', note(['⟦agent⟧: lidocaine, volume: 1 mL']), { severity });
    flags('dose/volume-missing', note(['⟦agent⟧: lidocaine, concentration: 1%']), { severity });
    flags('dose/volume-missing', note(['⟦agent⟧: lidocaine-prilocaine cream']), { severity });
    flags('dose/volume-missing', note(['⟦agent⟧: bacteriostatic saline']), { severity });
  });

  it('is silent where all is written, or not known yet, or not needed', () => {
    const right = [
      lidocaine('1 mL'),
      'agent: ??, concentration: ??, volume: ??',
      'agent: vapocoolant spray',
      'agent: lidocaine-prilocaine cream, amount: 2 g',
      'agent: ??, amount: 2 g',
      'agent: lidocaine, concentration: 4%, amount: 2 g',
      'agent: bacteriostatic saline, volume: 1 mL',
    ];
    for (const code of ['dose/agent-missing', 'dose/concentration-missing', 'dose/volume-missing'])
      for (const injection of right) silent(code, note([injection]));
  });
});

describe('an anesthetic that is one word', () => {
  const of = (word: string): string =>
    `visit: 2026-03-02\npatient: {id: C-1, born: 1961-08-09, weight: 62 kg}\nprocedures:\n  - site: left upper back\n    method: punch\n    anesthetic: ${word}\n`;

  it('is one finding where it stands for nothing, and none where it is not known yet', () => {
    flags('dose/unknown-product', of('⟦local⟧'));
    for (const word of ['local', '??'])
      for (const code of ['dose/agent-missing', 'dose/concentration-missing', 'dose/volume-missing'])
        silent(code, of(word));
    silent('dose/unknown-product', of('??'));
  });
});

describe('creams', () => {
  const of = (rest: string, patient = 'id: C-1, age: 7 months, weight: 8 kg'): string =>
    note([`agent: lidocaine-prilocaine cream, ${rest}`], patient);

  it('are held to amount, area and time of their own row', () => {
    // US label, table by age and weight: 3 to 12 months and over 5 kg: 2 g, 20 cm², 4 hours.
    const severity = 'warning';
    silent('dose/cream-over-limit', of('amount: 2 g, area: 20 cm2, on: 09:00, off: 13:00'));
    flags('dose/cream-over-limit', of('amount: ⟦2.1 g⟧, area: 20 cm2, on: 09:00, off: 13:00'), { severity });
    flags('dose/cream-over-limit', of('amount: 2 g, area: ⟦21 cm2⟧, on: 09:00, off: 13:00'), { severity });
    flags('dose/cream-over-limit', of('amount: 2 g, area: 20 cm2, on: 09:00, off: ⟦13:01⟧'), { severity });
  });

  it('are held to one hour in the smallest, and the longest of several applications counts', () => {
    // US label, table by age and weight: up to 3 months or 5 kg: 1 hour.
    const small = 'id: C-1, age: 2 months, weight: 4.5 kg';
    silent('dose/cream-over-limit', of('amount: 1 g, on: 09:00, off: 10:00', small));
    flags('dose/cream-over-limit', of('amount: 1 g, on: 09:00, off: ⟦10:01⟧', small), {
      severity: 'warning',
    });
    silent('dose/cream-over-limit', of('amount: 1 g, on: 09:00', small));
    const cream = 'agent: lidocaine-prilocaine cream, amount: 0.5 g';
    const two = (first: string, second: string): string =>
      note([`${cream}, on: 08:00, off: ${first}`, `${cream}, on: 09:00, off: ${second}`], small);
    silent('dose/cream-over-limit', two('09:00', '10:00'));
    flags('dose/cream-over-limit', two('⟦09:01⟧', '10:00'));
    flags('dose/cream-over-limit', two('09:00', '⟦10:01⟧'));
  });

  it('stay in the row of the weight where the age is reached and the weight is not', () => {
    const of7 = (kg: number, grams: string): string =>
      of(`amount: ${grams}`, `id: C-1, age: 7 years, weight: ${kg} kg`);
    // US label, the same table: 7 to 12 years and more than 20 kg; exactly 20 kg is not more.
    silent('dose/cream-over-limit', of7(20.1, '20 g'));
    flags('dose/cream-over-limit', of7(20, '⟦11 g⟧'));
    silent('dose/cream-over-limit', of7(20, '10 g'));
    flags('dose/cream-over-limit', of('amount: ⟦1.1 g⟧', 'id: C-1, age: 2 months, weight: 5.5 kg'));
  });

  it('are information where a value is only the most that was studied', () => {
    flags('dose/cream-over-limit', of('amount: ⟦61 g⟧', 'id: C-1, age: 40 years, weight: 70 kg'), {
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

  it('without a known maximum are told of, for a child and for an adult', () => {
    const five = (patient: string, amount: string): string =>
      note([`agent: lidocaine cream 5%, amount: ${amount}`], patient);
    flags('dose/cream-not-judged', five('id: C-1, age: 9 years, weight: 30 kg', '⟦2 g⟧'), {
      severity: 'information',
    });
    flags('dose/cream-not-judged', five('id: C-1, age: 40 years, weight: 70 kg', '⟦2 g⟧'), {
      severity: 'information',
    });
  });

  it('whose maximum is an area are told of where no area is written', () => {
    const four = (rest: string): string =>
      note([`agent: lidocaine cream 4%, amount: ${rest}`], 'id: C-1, age: 2 years, weight: 12 kg');
    const [finding] = flags('dose/cream-not-judged', four('⟦90 g⟧'), { severity: 'information' });
    assert.equal(finding?.form, 'area');
    silent('dose/cream-not-judged', four('5 g, area: 50 cm2'));
  });

  it('that are no cream, but an injected agent in g, are told of for adults too', () => {
    const adult = 'id: C-1, age: 40 years, weight: 70 kg';
    flags('dose/cream-not-judged', note(['agent: lidocaine, concentration: 1%, amount: ⟦40 g⟧'], adult));
  });

  it('cannot be judged under 50 kg without an age', () => {
    flags('dose/cannot-judge', of('amount: 5 g', 'id: C-1, weight: ⟦8 kg⟧'), { severity: 'error' });
    silent('dose/cannot-judge', of('amount: 5 g', 'id: C-1, weight: 60 kg'));
  });

  it('left on past midnight count with the whole time', () => {
    flags('dose/cream-over-limit', of('amount: 2 g, on: 23:00, off: ⟦06:00⟧'), { severity: 'warning' });
    silent('dose/cream-over-limit', of('amount: 2 g, on: 23:00, off: 01:00'));
  });
});

describe('a dictated line that names a product of the stock', () => {
  const { value } = readPractice(
    `stock:
  - {product: lido 1% epi, agent: lidocaine, concentration: 1%, epinephrine: "1:100,000"}
  - {product: blue vial 0.5%, agent: bupivacaine, concentration: 0.5%, epinephrine: "1:200,000"}
`,
  );
  const tables = tablesOf(value);
  const line = (text: string): string =>
    `visit: 2026-03-02\npatient: {id: C-1, born: 1961-08-09, weight: 62 kg}\nprocedures:\n  - site: left upper back\n    method: punch\n    anesthetic: ${text}\n`;

  for (const text of ['1 mL lido 1% epi', 'Lido 1% Epi 1 mL', '1 mL of lido 1% epi', 'lido 1% epi, 1 mL'])
    it(`is that product: ${text}`, () => {
      const { findings, dose } = judge(line(text), { tables });
      assert.deepEqual(
        findings.filter(({ code }) => /^(?:dose|quantity)/.test(code)),
        [],
      );
      assert.deepEqual([dose?.epinephrineMicrograms, dose?.agents[0]?.mg], [10, 10]);
      assert.equal(dose?.agents[0]?.agent, 'lidocaine');
    });

  it('gives a word that is no anesthetic the meaning that the practice gave it', () => {
    const { findings, dose } = judge(line('2 mL blue vial 0.5%'), { tables });
    assert.deepEqual(
      findings.filter(({ severity }) => severity === 'error').map(({ code }) => code),
      [],
    );
    assert.deepEqual([dose?.agents[0]?.agent, dose?.agents[0]?.mg], ['bupivacaine', 10]);
    assert.equal(dose?.epinephrineMicrograms, 10);
    flags('allergy/agent', line('2 mL ⟦blue vial⟧ 0.5%').replace('born', 'allergies: bupivacaine, born'), {
      tables,
    });
  });

  it('asks all the same where a word is more, less or another, and where no practice has it', () => {
    for (const text of ['1 mL lido 1% with ⟦epi⟧', '1 mL lido 2% ⟦epi⟧', '1 mL lido ⟦epi⟧ 1%'])
      flags('quantity/strength-unsaid', line(text), { tables });
    flags('quantity/strength-unsaid', line('1 mL lido 1% ⟦epi⟧'));
    flags('dose/unknown-agent', line('2 mL ⟦blue vial⟧ 0.25%'), { tables });
    flags('dose/unknown-agent', line('2 mL ⟦blue vial⟧ 0.5%'));
    flags('dose/volume-missing', line('⟦lido 1% epi⟧'), { tables });
  });

  it('is not taken from keys that are written out', () => {
    flags(
      'quantity/strength-unsaid',
      note(['agent: lido, concentration: 1%, epinephrine: ⟦epi⟧, volume: 1 mL']),
      { tables },
    );
  });
});
