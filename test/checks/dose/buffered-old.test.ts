import { flags, silent } from '../tester.ts';
import { note, withEpinephrine } from './notes.ts';

describe('dose/buffered-old', () => {
  const mixed = (day: string, ml = '2 mL'): string =>
    `${withEpinephrine(ml)}, buffered: 9:1, mixed-on: ${day}`;

  it('tells of stock that was mixed more than two weeks before', () => {
    // J Dermatol Surg Oncol 1991;17:411-4: more than 90% of both drugs after two weeks at 0 to 4 °C.
    flags('dose/buffered-old', note([mixed('⟦2026-02-15⟧')]), { severity: 'information' });
    silent('dose/buffered-old', note([mixed('2026-02-16')]));
    silent('dose/buffered-old', note([mixed('??')]));
  });

  it('leaves it to the check of the limit once that matters', () => {
    silent('dose/buffered-old', note([mixed('2026-02-15', '26 mL')]));
  });
});
