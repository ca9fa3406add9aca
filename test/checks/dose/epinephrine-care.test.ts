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

  it('knows the medicines of the labels as clinics write them, and not their neighbors', () => {
    const avoided =
      'propranolol ER 80 mg|carvedilol 6.25 BID|labetalol|pindolol|nonselective beta blocker|nortriptyline 25 qhs|imipramine|desipramine|clomipramine|doxepin 25 mg|trimipramine|protriptyline|amoxapine|TCA|tricyclics|phenelzine 15 TID|tranylcypromine|isocarboxazid|selegiline patch|rasagiline|safinamide|moclobemide|linezolid 600|MAOI|MAO inhibitor|methylergonovine|ergonovine';
    for (const one of avoided.split('|'))
      flags(code, note([marked('3 mL')], person(`medications: [${one}]`)), { severity: 'warning' });
    const harmless =
      'metoprolol succinate|atenolol 50|bisoprolol|nebivolol|sertraline|trazodone|bupropion|mirtazapine|cyclobenzaprine|amlodipine|sumatriptan|oxycodone|levothyroxine|tamsulosin|hydroxyzine|duloxetine';
    for (const one of harmless.split('|'))
      silent(code, note([withEpinephrine('6 mL')], person(`medications: [${one}]`)));
  });

  it('asks about a beta blocker of which nobody says which, from more than 40 µg on', () => {
    for (const word of ['beta blocker', 'beta-blockers', 'on a beta blocker']) {
      flags(code, note([marked('4.1 mL')], person(`medications: [${word}]`)), { severity: 'information' });
      silent(code, note([withEpinephrine('4 mL')], person(`medications: [${word}]`)));
    }
    silent(code, note([withEpinephrine('6 mL')], person('medications: [cardioselective beta blocker]')));
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
