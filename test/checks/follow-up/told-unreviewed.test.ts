import { flags, silent } from '../tester.ts';

const code = 'follow-up/told-unreviewed';

const note = (result: string): string =>
  `visit: 2026-03-02\nclinician: K.O.\nscribe: T.L.\nprocedures:\n  - site: left ear\n    method: shave\n` +
  `    specimen:\n      label: A\n      results:\n        - {${result}}\n`;

const told = 'told: {on: 2026-03-10, by: M.R., how: telephone}';
const came = 'received: 2026-03-09, diagnosis: psoriasis';

describe(code, () => {
  it('flags a result that was told and that no clinician has read', () => {
    flags(code, note(`⟦received⟧: 2026-03-09, diagnosis: psoriasis, ${told}`), { severity: 'warning' });
    flags(code, note(`⟦received⟧: 2026-03-09, diagnosis: psoriasis, told: 2026-03-10`));
    for (const word of ['pending', 'no', 'not yet', 'awaiting review'])
      flags(code, note(`${came}, reviewed: ⟦${word}⟧, ${told}`));
    flags(code, note(`${came}, reviewed: ⟦T.L.⟧, ${told}`));
  });

  it('flags a telling that came before the review', () => {
    flags(code, note(`${came}, reviewed: K.O. 2026-03-11, ${told.replace('2026-03-10', '⟦2026-03-10⟧')}`), {
      severity: 'warning',
    });
  });

  it('is silent where a clinician read it, told it, or nobody told it yet', () => {
    silent(code, note(`${came}, reviewed: K.O., ${told}`));
    silent(code, note(`${came}, reviewed: K.O. 2026-03-09, ${told}`));
    silent(code, note(`${came}, reviewed: 2026-03-10, ${told}`));
    silent(code, note(`${came}, reviewed: ??, ${told}`));
    silent(code, note(`${came}, told: {on: 2026-03-10, by: K.O., how: telephone}`));
    silent(code, note(came));
    silent(code, note(`${came}, told: {on: 2026-03-10, by: M.R., how: left voicemail}`));
  });
});
