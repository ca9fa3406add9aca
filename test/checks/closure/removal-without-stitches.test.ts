import { flags, silent } from '../tester.ts';
import { note } from './_closure.ts';

describe('closure/removal-without-stitches', () => {
  const code = 'closure/removal-without-stitches';

  it('flags a day for stitches of a wound that has none', () => {
    flags(code, note('closure: none', 'sutures-due: ⟦2026-03-12⟧'), { severity: 'warning' });
    flags(code, note('closure: left to heal by second intention', 'sutures-due: ⟦2026-03-12⟧'));
    flags(code, note('closure: tissue glue', 'sutures-out: {on: ⟦2026-03-12⟧, by: K.O.}'), {
      today: '2026-03-20',
    });
  });

  it('is silent with stitches of any kind, without a day, and where nothing is said of the closure', () => {
    silent(code, note('closure: {material: nylon, size: 4-0, count: 2}', 'sutures-due: 2026-03-12'));
    silent(code, note('closure: staples', 'sutures-due: 2026-03-12'));
    silent(code, note('closure: none', 'hemostasis: [pressure, suture]', 'sutures-due: 2026-03-12'));
    silent(code, note('closure: [{material: nylon}, adhesive strips]', 'sutures-due: 2026-03-12'));
    silent(code, note('closure: none', 'sutures-due: ??'));
    silent(code, note('closure: none'));
    silent(code, note('sutures-due: 2026-03-12'));
  });
});
