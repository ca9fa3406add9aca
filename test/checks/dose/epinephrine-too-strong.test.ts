import { flags, silent } from '../tester.ts';
import { lidocaine, note, withEpinephrine } from './notes.ts';

describe('dose/epinephrine-too-strong', () => {
  it('flags what is stronger than 1:50,000', () => {
    flags('dose/epinephrine-too-strong', note([withEpinephrine('1 mL', '⟦"1:10,000"⟧')]), {
      severity: 'error',
    });
    flags('dose/epinephrine-too-strong', note([withEpinephrine('1 mL', '⟦1:1000⟧')]));
    silent('dose/epinephrine-too-strong', note([withEpinephrine('1 mL', '"1:50,000"')]));
    silent('dose/epinephrine-too-strong', note([withEpinephrine('1 mL', 'none'), lidocaine('1 mL')]));
  });
});
