import { readPractice } from '../../../src/note/read.ts';
import { tablesOf } from '../../../src/practice/tables.ts';
import { flags, silent } from '../tester.ts';
import { note } from './notes.ts';

describe('dose/product-differs', () => {
  const tables = tablesOf(
    readPractice(
      'stock:\n  - {product: lido epi, agent: lidocaine, concentration: 1%, epinephrine: "1:100,000"}\n  - {product: lido 2, agent: lidocaine, concentration: 2%}\n',
    ).value,
  );
  const code = 'dose/product-differs';

  it('asks where a note writes another agent, strength or epinephrine than the product holds', () => {
    flags(code, note(['product: lido 2, concentration: ⟦1%⟧, volume: 20 mL']), {
      tables,
      severity: 'warning',
    });
    flags(code, note(['product: lido 2, agent: ⟦bupivacaine⟧, volume: 2 mL']), { tables });
    flags(code, note(['product: lido epi, epinephrine: ⟦none⟧, volume: 2 mL']), { tables });
    flags(code, note(['product: lido epi, epinephrine: ⟦"1:200,000"⟧, volume: 2 mL']), { tables });
    flags(code, note(['product: lido 2, epinephrine: ⟦"1:200,000"⟧, volume: 2 mL']), { tables });
  });

  it('is silent where both say the same, and where the product is not known', () => {
    for (const rest of [
      'product: lido 2, volume: 2 mL',
      'product: lido 2, agent: lignocaine, concentration: 20 mg/mL, epinephrine: none, volume: 2 mL',
      'product: lido epi, epinephrine: 10 mcg/mL, volume: 2 mL',
      'product: lido epi, epinephrine: ??, volume: 2 mL',
      'product: other, agent: lidocaine, concentration: 1%, volume: 2 mL',
    ])
      silent(code, note([rest]), { tables });
  });
});
