import { flags, silent } from '../tester.ts';
import { lidocaine, note, withEpinephrine } from './notes.ts';
import { person, marked } from './_caution-findings.ts';

describe('dose/epinephrine-care', () => {
  const code = 'dose/epinephrine-care';

  it('flags any amount with a pheochromocytoma', () => {
    flags(code, note([marked('0.5 mL')], person('conditions: [pheochromocytoma]')), { severity: 'warning' });
    silent(code, note([lidocaine('0.5 mL')], person('conditions: [pheochromocytoma]')));
    silent(code, note([withEpinephrine('0.5 mL')], person('conditions: [no pheochromocytoma]')));
  });

  for (const medicine of [
    'propranolol 40 mg',
    'nadolol',
    'sotalol',
    'amitriptyline',
    'phenelzine',
    'selegiline',
    'linezolid',
    'methylergonovine',
  ])
    it(`with ${medicine}: a warning from more than a trace on`, () => {
      const patient = person(`medications: [${medicine}]`);
      flags(code, note([marked('1.1 mL')], patient), { severity: 'warning' });
      silent(code, note([withEpinephrine('1 mL')], patient));
    });

  it('with uncontrolled hypertension: a warning from more than a trace on', () => {
    const patient = person('conditions: [uncontrolled hypertension]');
    flags(code, note([marked('1.1 mL')], patient), { severity: 'warning' });
    silent(code, note([withEpinephrine('1 mL')], patient));
    silent(code, note([withEpinephrine('6 mL')], person('conditions: ["HTN, controlled"]')));
  });

  it('with promethazine: from more than 40 µg on, as information', () => {
    const patient = person('medications: [promethazine]');
    flags(code, note([marked('4.1 mL')], patient), { severity: 'information' });
    silent(code, note([withEpinephrine('4 mL')], patient));
  });

  it('is silent with a cardioselective beta blocker, eye drops, and what was stopped', () => {
    for (const medicine of ['metoprolol', 'timolol eye drops', 'topical doxepin cream'])
      silent(code, note([withEpinephrine('6 mL')], person(`medications: [${medicine}]`)));
    silent(code, note([withEpinephrine('6 mL')], person('conditions: [hypothyroidism, hypertension]')));
  });
});
