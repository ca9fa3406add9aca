import assert from 'node:assert/strict';
import { referenceTables, type Tables } from '../../../src/practice/tables.ts';
import { fixed, flags, silent } from '../tester.ts';
import { lidocaine, note } from './notes.ts';

describe('dose/unknown-product', () => {
  const lidocaineRow = referenceTables.agents.find('lidocaine')!;
  const tables: Tables = {
    ...referenceTables,
    stock: new Map([
      [
        'lido 1% epi',
        { name: 'lido 1% epi', agent: lidocaineRow, mgPerMl: 10, epinephrineMicrogramsPerMl: 10 },
      ],
    ]),
  };

  it('flags what is not in stock', () => {
    flags('dose/unknown-product', note(['product: ⟦lido 1% ep⟧, volume: 1 mL']), {
      tables,
      severity: 'error',
    });
    flags('dose/unknown-product', note(['product: ⟦lido 1% epi⟧, volume: 1 mL']));
    assert.ok(
      fixed('dose/unknown-product', note(['product: lido 1% ep, volume: 1 mL']), 'lido 1% epi', {
        tables,
      }).includes('product: lido 1% epi,'),
    );
  });

  it('proposes no product of another strength: that would change what is said to have been given', () => {
    const [finding] = flags('dose/unknown-product', note(['product: ⟦lido 2% epi⟧, volume: 1 mL']), {
      tables,
    });
    assert.equal(finding?.form, 'main');
  });

  it('is silent for stock, in any case, and beside what is written out', () => {
    silent('dose/unknown-product', note(['product: Lido 1% Epi, volume: 1 mL']), { tables });
    silent('dose/unknown-product', note([`product: blue box, ${lidocaine('1 mL')}`]), { tables });
  });

  it('stands for strength and agent', () => {
    for (const code of ['dose/agent-missing', 'dose/concentration-missing', 'dose/volume-missing'])
      silent(code, note(['product: lido 1% epi, volume: 1 mL']), { tables });
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
