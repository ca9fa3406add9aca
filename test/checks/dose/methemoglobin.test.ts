import { flags, silent } from '../tester.ts';
import { lidocaine, note } from './notes.ts';
import { person } from './_caution-findings.ts';

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
