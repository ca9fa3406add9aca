import { flags, silent } from '../tester.ts';
import { lidocaine, note, withEpinephrine } from './notes.ts';

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
