import { readPractice } from '../../../src/note/read.ts';
import { tablesOf } from '../../../src/practice/tables.ts';
import type { Severity } from '../../../src/note/tree/finding.ts';
import { flags, silent } from '../tester.ts';
import { note } from './_agent.ts';

describe('allergy/preservative', () => {
  const cases: readonly (readonly [entry: string, anesthetic: string, severity: Severity | 'silent'])[] = [
    ['methylparaben', '{agent: ⟦lidocaine⟧, concentration: 1%, volume: 1 mL}', 'warning'],
    ['parabens', '{agent: ⟦lidocaine⟧, concentration: 1%, volume: 1 mL, preservative-free: no}', 'error'],
    [
      'methylparaben',
      '{agent: lidocaine, concentration: 1%, volume: 1 mL, preservative-free: yes}',
      'silent',
    ],
    ['methylparaben', '{agent: ⟦mepivacaine⟧, concentration: 1%, volume: 1 mL}', 'warning'],
    [
      'methylparaben',
      '{agent: ⟦lidocaine⟧, concentration: 1%, volume: 1 mL, preservative-free: ??}',
      'warning',
    ],
    ['methylparaben', '{agent: bacteriostatic saline, volume: 1 mL}', 'silent'],
    ['benzyl alcohol', '{agent: ⟦bacteriostatic saline⟧, volume: 1 mL}', 'warning'],
    ['benzyl alcohol', '{agent: lidocaine, concentration: 1%, volume: 1 mL}', 'silent'],
    ['PABA', '{agent: ⟦lidocaine⟧, concentration: 1%, volume: 1 mL}', 'information'],
    ['PABA', '{agent: lidocaine, concentration: 1%, volume: 1 mL, preservative-free: yes}', 'silent'],
    ['sulfite', '{agent: lidocaine, concentration: 1%, volume: 1 mL}', 'silent'],
  ];
  for (const [entry, anesthetic, severity] of cases)
    it(`${entry}: ${anesthetic} is ${severity}`, () => {
      if (severity === 'silent') silent('allergy/preservative', note(`[${entry}]`, anesthetic));
      else flags('allergy/preservative', note(`[${entry}]`, anesthetic), { severity });
    });

  it('goes by what the practice file says of the product', () => {
    const stock = (more: string): string =>
      `stock:\n  - {product: blue vial, agent: lidocaine, concentration: 1%, ${more}}\n`;
    const used = (marked: string): string => note('[methylparaben]', `{product: ${marked}, volume: 1 mL}`);
    const tables = (more: string): { tables: ReturnType<typeof tablesOf> } => ({
      tables: tablesOf(readPractice(stock(more)).value),
    });
    silent('allergy/preservative', used('blue vial'), tables('preservative-free: yes'));
    silent('allergy/preservative', used('blue vial'), tables('preservatives: [sodium chloride]'));
    flags('allergy/preservative', used('⟦blue vial⟧'), {
      ...tables('preservatives: [methylparaben]'),
      severity: 'error',
    });
  });
});
