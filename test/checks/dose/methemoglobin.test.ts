import { flags, silent } from '../tester.ts';
import { note } from './notes.ts';
import { person } from './_caution-findings.ts';

describe('dose/methemoglobin', () => {
  const code = 'dose/methemoglobin';
  const cream = 'agent: ⟦lidocaine-prilocaine cream⟧, amount: 1 g';
  const infant = (more: string): string => `id: C-1, age: 8 months, weight: 8 kg, ${more}`;

  it('goes by what the label says: disease and infants with such medicines, then the enzyme, then medicines', () => {
    flags(code, note([cream], person('conditions: [congenital methemoglobinemia]')), { severity: 'error' });
    flags(code, note([cream], infant('medications: [co-trimoxazole]')), { severity: 'error' });
    flags(code, note([cream], person('conditions: [G6PD deficiency]')), { severity: 'warning' });
    flags(code, note([cream], person('medications: [dapsone 100 mg]')), { severity: 'warning' });
    flags(code, note([cream], person('medications: [acetaminophen]')), { severity: 'information' });
    flags(code, note(['agent: ⟦prilocaine⟧, concentration: 4%, volume: 1 mL'], person('conditions: [G6PD]')));
  });

  it('tells of every local anesthetic, less loudly where it is not prilocaine or benzocaine', () => {
    const plain = 'agent: ⟦lidocaine⟧, concentration: 1%, volume: 1 mL';
    flags(code, note([plain], person('conditions: [congenital methemoglobinemia]')), { severity: 'warning' });
    flags(code, note([plain], person('conditions: [G6PD deficiency]')), { severity: 'information' });
    flags(code, note([plain], person('medications: [nitrofurantoin]')), { severity: 'information' });
    flags(code, note(['agent: ⟦benzocaine⟧, amount: 1 g'], person('medications: [dapsone]')), {
      severity: 'warning',
    });
    silent(code, note([plain.replace(/[⟦⟧]/g, '')], person('medications: [acetaminophen, metoclopramide]')));
    silent(
      code,
      note(['agent: bacteriostatic saline, volume: 1 mL'], person('conditions: [methemoglobinemia]')),
    );
  });

  it('knows the medicines of the labels as clinics write them, and not their neighbors', () => {
    const plain = 'agent: ⟦lidocaine⟧, concentration: 1%, volume: 1 mL';
    const said =
      'dapsone gel|dapsone 50 mg daily|nitroglycerin ointment|nitropaste|nitro patch|NTG SL prn|isosorbide|ISMN 30 mg|nitroprusside|inhaled nitric oxide|TMP-SMX DS|SMX-TMP|co-trimoxazole|sulfadiazine|sulfasalazine|nitrofurantoin 100 mg BID|primaquine|chloroquine|quinine|phenobarbital|phenytoin|fosphenytoin|divalproex ER|valproic acid|sodium valproate|cyclophosphamide|flutamide|hydroxyurea|hydroxycarbamide|ifosfamide|rasburicase|para-aminosalicylic acid|phenazopyridine';
    for (const one of said.split('|'))
      flags(code, note([plain], person(`medications: [${one}]`)), { severity: 'information' });
    const harmless =
      'hydroxychloroquine|glipizide|sulindac|sulfonylurea|trimethoprim|gabapentin|carbamazepine|levetiracetam|nitazoxanide|silver sulfadiazine cream|isotretinoin|quinapril|rifampin|methotrexate|azathioprine|ibuprofen|acetaminophen|metoclopramide';
    for (const one of harmless.split('|'))
      silent(code, note([plain.replace(/[⟦⟧]/g, '')], person(`medications: [${one}]`)));
  });

  it('tells of every local anesthetic under 6 months', () => {
    const of = (months: number): string =>
      note(
        ['agent: ⟦lidocaine⟧, concentration: 1%, volume: 0.5 mL'],
        `id: C-1, age: ${months} months, weight: 7 kg`,
      );
    flags(code, of(5), { severity: 'information' });
    silent(code, of(6).replace(/[⟦⟧]/g, ''));
  });

  it('is silent without what makes it worse', () => {
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
