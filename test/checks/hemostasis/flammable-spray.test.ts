import { flags, silent } from '../tester.ts';
import { note } from './_hemostasis.ts';

describe('hemostasis/flammable-spray', () => {
  const sprayed = (agent: string, hemostasis: string): string =>
    note(['site: left cheek', `anesthetic: {agent: ${agent}}`, `hemostasis: ${hemostasis}`]);

  it('flags the spray', () => {
    flags('hemostasis/flammable-spray', sprayed('⟦ethyl chloride⟧', 'heat cautery'), { severity: 'warning' });
    flags('hemostasis/flammable-spray', sprayed('⟦cold spray⟧', 'electrosurgery'), {
      severity: 'information',
    });
  });

  it('is silent without a spark and on what is injected', () => {
    silent('hemostasis/flammable-spray', sprayed('ethyl chloride', 'pressure'));
    silent('hemostasis/flammable-spray', sprayed('lidocaine', 'electrosurgery'));
  });
});
