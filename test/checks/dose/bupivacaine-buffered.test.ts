import { flags, silent } from '../tester.ts';
import { note } from './notes.ts';

describe('dose/bupivacaine-buffered', () => {
  const of = (agent: string, buffered: string): string =>
    note([`agent: ${agent}, concentration: 0.5%, volume: 1 mL, buffered: ${buffered}`]);

  it('flags the mixture', () => {
    flags('dose/bupivacaine-buffered', of('bupivacaine', '⟦9:1⟧'), { severity: 'warning' });
    flags('dose/bupivacaine-buffered', of('bupivacaine', '⟦yes⟧'));
    silent('dose/bupivacaine-buffered', of('bupivacaine', 'no'));
    silent('dose/bupivacaine-buffered', of('lidocaine', '9:1'));
  });
});
