import { flags, silent } from '../tester.ts';
import { note, withEpinephrine } from './notes.ts';

describe('dose/epinephrine-does-not-unlock', () => {
  it('explains the plain limit once it matters', () => {
    flags('dose/epinephrine-does-not-unlock', note([withEpinephrine('23 mL', '⟦"1:400,000"⟧')]), {
      severity: 'information',
    });
    silent('dose/epinephrine-does-not-unlock', note([withEpinephrine('22 mL', '"1:400,000"')]));
    silent('dose/epinephrine-does-not-unlock', note([withEpinephrine('40 mL', '"1:200,000"')]));
  });

  it('points at the day on which old stock was mixed', () => {
    const mixed = (day: string): string => `${withEpinephrine('26 mL')}, buffered: 9:1, mixed-on: ${day}`;
    flags('dose/epinephrine-does-not-unlock', note([mixed('⟦2026-02-15⟧')]));
    silent('dose/epinephrine-does-not-unlock', note([mixed('2026-02-16')]));
  });

  it('is silent where the limits are the same with and without', () => {
    const ropivacaine = 'agent: ropivacaine, concentration: 0.5%, epinephrine: "1:400,000", volume: 36 mL';
    silent('dose/epinephrine-does-not-unlock', note([ropivacaine]));
  });
});
