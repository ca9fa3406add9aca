import { flags, silent } from '../tester.ts';
import { scars, tac } from './_injected.ts';

describe('dose/injected-not-judged', () => {
  const code = 'dose/injected-not-judged';

  it('says what is missing to judge a dose', () => {
    flags(code, scars('', '{drug: ⟦triamcinolone⟧, volume: 0.5 mL}'), { severity: 'warning' });
    flags(code, scars('', '{drug: ⟦triamcinolone⟧, concentration: 10 mg/mL}'), { severity: 'warning' });
    flags(code, scars('', '⟦triamcinolone 10 mg/mL⟧'), { severity: 'warning' });
    flags(code, scars('', '⟦0.3 mL triamcinolone⟧'), { severity: 'warning' });
    flags(code, scars('', '').replace('injected: ', '⟦injected⟧: {volume: 0.3 mL}'), { severity: 'warning' });
  });

  it('says where no limit is known, and that limits are not from children', () => {
    flags(code, scars('', '{drug: ⟦bleomycin⟧, concentration: 1 unit/mL, volume: 0.3 mL}'), {
      severity: 'information',
    });
    flags(code, scars('', '{drug: ⟦colchicine⟧, concentration: 1 mg/mL, volume: 0.3 mL}'), {
      severity: 'information',
    });
    flags(
      code,
      scars('', tac('10 mg/mL', '0.3 mL'))
        .replace('triamcinolone', '⟦triamcinolone⟧')
        .replace('1980', '2018'),
      {
        severity: 'information',
      },
    );
  });

  it('is silent where the dose is judged, not yet known, or reported by what reads it', () => {
    silent(code, scars('', tac('10 mg/mL', '0.3 mL')));
    silent(code, scars('', '0.3 mL triamcinolone 10 mg/mL'));
    silent(code, scars('', '0.3 cc of triamcinolone acetonide 10 mg/cc'));
    silent(code, scars('', tac('??', '??')));
    silent(code, scars('', '{drug: ??}'));
    silent(code, scars('', tac('strong', '0.3 mL')));
    silent(code, scars('', '{drug: triamcinolone, concentraton: 10 mg/mL, volume: 0.3 mL}'));
  });
});
