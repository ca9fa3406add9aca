import assert from 'node:assert/strict';
import { flags, judgeBy, silent } from '../tester.ts';
import { lidocaine, note, withEpinephrine } from './notes.ts';

const person = (more: string): string => `id: C-1, born: 1961-08-09, weight: 62 kg, ${more}`;
/** An injection with the strength of its epinephrine marked. */
const marked = (volume: string): string =>
  `agent: lidocaine, concentration: 1%, epinephrine: ⟦"1:100,000"⟧, volume: ${volume}`;
const at = (site: string, text: string): string => text.replace('left upper back', site);

describe('dose/epinephrine-care', () => {
  const code = 'dose/epinephrine-care';

  it('flags any amount with a pheochromocytoma', () => {
    flags(code, note([marked('0.5 mL')], person('conditions: [pheochromocytoma]')), { severity: 'warning' });
    silent(code, note([lidocaine('0.5 mL')], person('conditions: [pheochromocytoma]')));
    silent(code, note([withEpinephrine('0.5 mL')], person('conditions: [no pheochromocytoma]')));
  });

  for (const medicine of ['propranolol 40 mg', 'nadolol', 'amitriptyline', 'phenelzine', 'promethazine'])
    it(`with ${medicine}: from more than 40 µg on, as information`, () => {
      const patient = person(`medications: [${medicine}]`);
      flags(code, note([marked('4.1 mL')], patient), { severity: 'information' });
      silent(code, note([withEpinephrine('4 mL')], patient));
    });

  it('is silent with a cardioselective beta blocker, eye drops, and what was stopped', () => {
    for (const medicine of ['metoprolol', 'timolol eye drops', 'topical doxepin cream'])
      silent(code, note([withEpinephrine('6 mL')], person(`medications: [${medicine}]`)));
    silent(code, note([withEpinephrine('6 mL')], person('conditions: [hypothyroidism, hypertension]')));
  });
});

describe('dose/epinephrine-end-artery', () => {
  const code = 'dose/epinephrine-end-artery';

  it('flags a digit with Raynaud or vascular disease', () => {
    for (const condition of [
      'Raynaud phenomenon',
      "Raynaud's",
      'peripheral arterial disease',
      'systemic sclerosis',
    ])
      flags(code, at('right ring finger', note([marked('1 mL')], person(`conditions: ["${condition}"]`))), {
        severity: 'warning',
      });
  });

  it('is silent on a healthy digit, on a plain solution and elsewhere on the body', () => {
    const raynaud = person('conditions: [Raynaud phenomenon]');
    silent(code, at('right ring finger', note([withEpinephrine('1 mL')])));
    silent(code, at('right ring finger', note([lidocaine('1 mL')], raynaud)));
    silent(code, note([withEpinephrine('1 mL')], raynaud));
  });

  it('takes vascular disease of the limbs for none of the nose, but Raynaud for one of the nose too', () => {
    silent(code, at('nasal tip', note([withEpinephrine('1 mL')], person('conditions: [PAD]'))));
    flags(code, at('nasal tip', note([marked('1 mL')], person('conditions: [Raynaud]'))));
  });

  it('counts an injection for the whole visit once', () => {
    flags(
      code,
      `visit: 2026-03-02\npatient: {id: C-1, conditions: [Raynaud]}\nanesthetic: {${marked('2 mL')}}\n` +
        'procedures:\n  - {site: right thumb, method: punch}\n  - {site: left thumb, method: punch}\n',
    );
  });
});

describe('an answer behind a colon', () => {
  it('denies a condition that calls for care', () => {
    const finger = (conditions: string): string =>
      at('left index finger', note([withEpinephrine('1 mL')], person(`conditions: ["${conditions}"]`)));
    for (const text of ['Raynaud: denies', 'Raynaud: no, diabetes: no'])
      silent('dose/epinephrine-end-artery', finger(text));
    assert.equal(judgeBy('dose/epinephrine-end-artery', finger('Raynaud: yes')).length, 1);
  });
});

describe('dose/reduced-tolerance', () => {
  const code = 'dose/reduced-tolerance';
  const ill = person('conditions: [cirrhosis of the liver]');

  it('flags half of the limit, and is silent below', () => {
    // 62 kg: 7 mg/kg is 434 mg, half of it 217 mg, 21.7 mL of 1%.
    flags(
      code,
      note(['agent: lidocaine, concentration: 1%, epinephrine: "1:100,000", volume: ⟦21.7 mL⟧'], ill),
      {
        severity: 'information',
      },
    );
    silent(code, note([withEpinephrine('21.6 mL')], ill));
    silent(code, note([withEpinephrine('25 mL')], person('conditions: [asthma]')));
  });
});

describe('dose/methemoglobin', () => {
  const code = 'dose/methemoglobin';
  const cream = 'agent: ⟦lidocaine-prilocaine cream⟧, amount: 1 g';
  const infant = (more: string): string => `id: C-1, age: 8 months, weight: 8 kg, ${more}`;

  it('goes by what the label says: disease and infants with such medicines, then the enzyme, then medicines', () => {
    flags(code, note([cream], person('conditions: [congenital methemoglobinemia]')), { severity: 'error' });
    flags(code, note([cream], infant('medications: [co-trimoxazole]')), { severity: 'error' });
    flags(code, note([cream], person('conditions: [G6PD deficiency]')), { severity: 'warning' });
    flags(code, note([cream], person('medications: [dapsone 100 mg]')), { severity: 'information' });
    flags(code, note(['agent: ⟦prilocaine⟧, concentration: 4%, volume: 1 mL'], person('conditions: [G6PD]')));
  });

  it('is silent without prilocaine, and without what makes it worse', () => {
    silent(code, note([lidocaine('1 mL')], person('conditions: [congenital methemoglobinemia]')));
    silent(
      code,
      note(['agent: lidocaine-prilocaine cream, amount: 1 g'], infant('medications: [vitamin D]')),
    );
    silent(
      code,
      note(['agent: lidocaine-prilocaine cream, amount: 1 g'], person('conditions: [no G6PD deficiency]')),
    );
  });
});

describe('dose/pregnancy', () => {
  const code = 'dose/pregnancy';

  it('flags another anesthetic than lidocaine alone', () => {
    const pregnant = person('conditions: [28 weeks pregnant]');
    flags(code, note(['agent: ⟦mepivacaine⟧, concentration: 1%, volume: 1 mL'], pregnant), {
      severity: 'information',
    });
    flags(code, note(['agent: ⟦lidocaine-prilocaine cream⟧, amount: 1 g'], pregnant));
    const remarks = (text: string): string =>
      `${note(['agent: ⟦mepivacaine⟧, concentration: 1%, volume: 1 mL'])}    remarks: ${text}\n`;
    for (const said of ['expecting', 'Expecting', 'expecting a child'])
      flags(
        code,
        note(['agent: ⟦mepivacaine⟧, concentration: 1%, volume: 1 mL'], person(`conditions: [${said}]`)),
      );
    silent(code, remarks('expecting results by Friday').replace(/[⟦⟧]/g, ''));
    for (const said of ['20 weeks pregnant', 'G2P1 at 28 weeks gestation', 'expecting a baby in May'])
      flags(code, remarks(said));
    silent(code, remarks('not pregnant').replace(/[⟦⟧]/g, ''));
    silent(code, note([lidocaine('2 mL'), 'agent: lidocaine cream 4%, amount: 1 g'], pregnant));
    silent(
      code,
      note(['agent: mepivacaine, concentration: 1%, volume: 1 mL'], person('conditions: [not pregnant]')),
    );
  });
});

describe('dose/agents-mixed', () => {
  const code = 'dose/agents-mixed';

  it('flags a second injected agent, once', () => {
    const bupivacaine = (name: string): string => `agent: ${name}, concentration: 0.25%, volume: 1 mL`;
    flags(code, note([lidocaine('1 mL'), bupivacaine('⟦bupivacaine⟧'), bupivacaine('bupivacaine')]), {
      severity: 'information',
    });
    silent(code, note([lidocaine('1 mL'), withEpinephrine('1 mL')]));
    silent(code, note(['agent: lidocaine-prilocaine cream, amount: 1 g', lidocaine('1 mL')]));
  });
});

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
