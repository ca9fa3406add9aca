import { flags, silent } from '../tester.ts';
import { lidocaine, note } from './notes.ts';
import { says } from './_over-limit.ts';

describe('dose/near-limit', () => {
  it('flags from 80% on, and no longer past the limit', () => {
    const severity = 'warning';
    silent('dose/near-limit', note([lidocaine('22.3 mL')]));
    flags('dose/near-limit', note([lidocaine('⟦22.32 mL⟧')]), { severity });
    flags('dose/near-limit', note([lidocaine('⟦27.9 mL⟧')]), { severity });
    silent('dose/near-limit', note([lidocaine('28 mL')]));
  });

  it('says how much more would be in order', () => {
    says('dose/near-limit', note([lidocaine('⟦23 mL⟧')]), '82.4%', 'Give at most 4.9 mL more');
    says('dose/near-limit', note([lidocaine('⟦27.9 mL⟧')]), 'Add nothing more');
  });
});
