import { flags, silent } from '../tester.ts';

const code = 'allergy/injected';
const note = (allergies: string, rest: string): string =>
  `visit: 2026-03-02\npatient: {id: C-1, allergies: ${allergies}}\nprocedures:\n  - site: left cheek\n    method: punch\n${rest}`;
const later = (drug: string): string =>
  `events:\n  - {on: 2026-03-02, kind: raised scar, injected: {drug: ${drug}, volume: 0.2 mL}}\n`;

describe('allergy/injected', () => {
  it('flags a drug that the allergies name, whether a table knows it or not', () => {
    for (const [allergies, drug] of [
      ['[triamcinolone]', 'triamcinolone'],
      ['[corticosteroids]', 'triamcinolone'],
      ['[{to: triamcinolone, reaction: hives}]', 'triamcinolone acetonide'],
      ['[triamcinolone]', 't-riamcinolone'],
      ['[bleomycin]', 'bleomycin'],
      ['[hyaluronidase causes swelling]', 'hyaluronidase'],
      ['[{to: fluorouracil, reaction: rash}]', 'fluorouracil 50 mg/mL'],
    ] as const)
      flags(code, note(allergies, later(`⟦${drug}⟧`)), { severity: 'error' });
  });

  it('warns of what its label lists besides the drug', () => {
    flags(code, note('[benzyl alcohol]', later('⟦triamcinolone⟧')), { severity: 'warning' });
    flags(code, note('[polysorbate 80]', later('⟦triamcinolone⟧')), { severity: 'warning' });
    silent(code, note('[{to: benzyl alcohol, reaction: none}, nickel]', later('bleomycin')));
  });

  it('is a warning where the entry is less than an allergy, or leaves it open', () => {
    flags(code, note('[{to: triamcinolone, reaction: racing heart}]', later('⟦triamcinolone⟧')), {
      severity: 'warning',
    });
    flags(code, note('[possible bleomycin allergy]', later('⟦bleomycin⟧')), { severity: 'warning' });
  });

  it('looks into every entry of a procedure, of an event and of a dictated line', () => {
    const here = (injected: string): string => `    injected: ${injected}\n`;
    flags(
      code,
      note('[triamcinolone]', here('{drug: ⟦triamcinolone⟧, concentration: 10 mg/mL, volume: 0.2 mL}')),
      {
        severity: 'error',
      },
    );
    flags(code, note('[triamcinolone]', here('⟦0.2 mL triamcinolone 10 mg/mL⟧')), { severity: 'error' });
    flags(code, note('[bleomycin]', here('[{drug: triamcinolone}, {drug: ⟦bleomycin⟧}]')), {
      severity: 'error',
    });
  });

  // Label of the suspension: benzyl alcohol and polysorbate 80. Br J Dermatol 1989: reactions across corticosteroids.
  it('warns of what is in a drug, or akin to it', () => {
    for (const allergy of ['benzyl alcohol', 'polysorbate 80'])
      flags(code, note(`[${allergy}]`, later('⟦triamcinolone⟧')), { severity: 'warning' });
    flags(code, note('[triamcinolone]', later('⟦betamethasone⟧')), { severity: 'error' });
    flags(code, note('[steroids]', later('⟦betamethasone⟧')), { severity: 'error' });
    silent(code, note('[benzyl alcohol]', later('bleomycin')));
    silent(code, note('[latex]', later('triamcinolone')));
  });

  it('reads what free words say was injected', () => {
    flags(code, note('[triamcinolone]', '    remarks: injected ⟦triamcinolone⟧ 10 mg/mL\n'), {
      severity: 'error',
    });
    const action = 'events: [{on: 2026-03-02, kind: raised scar, action: ⟦triamcinolone⟧ injected}]\n';
    flags(code, note('[triamcinolone]', action), { severity: 'error' });
  });

  it('is silent for another drug, a denied allergy, and what was not injected', () => {
    silent(code, note('[penicillin]', later('triamcinolone')));
    silent(code, note('none', later('triamcinolone')));
    silent(code, note('[no bleomycin allergy]', later('bleomycin')));
    silent(code, note('[bleomycin]', later('??')));
    silent(code, note('[triamcinolone]', '    remarks: allergic to triamcinolone, so nothing injected\n'));
    silent(code, note('[triamcinolone]', '    remarks: no triamcinolone injected\n'));
    silent(code, note('[lidocaine]', later('lidocaine')));
  });
});
