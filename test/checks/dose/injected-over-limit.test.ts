import assert from 'node:assert/strict';
import fc from 'fast-check';
import { messageOf } from '../../../src/checks/index.ts';
import { flags, judgeBy, silent } from '../tester.ts';
import { scars, tac } from './_injected.ts';

describe('dose/injected-over-limit', () => {
  const code = 'dose/injected-over-limit';

  // 40 mg a session: secondary pages. 20 mg/cm2: the most in trials, Dermatology 2023;239:462-477.
  it('warns of a session over 40 mg, at the injection with which it went over', () => {
    const [finding] = flags(code, scars('', tac('40 mg/mL', '⟦1.5 mL⟧')), { severity: 'warning' });
    assert.match(messageOf(finding!), /^20 mg over the 40 mg of a session: 60 mg of triamcinolone/);
    flags(code, scars('', tac('40 mg/mL', '0.5 mL'), tac('40 mg/mL', '0.5 mL'), tac('10 mg/mL', '⟦0.1 mL⟧')));
    flags(code, scars('', `[${tac('4%', '0.6 mL')}, ${tac('4%', '⟦0.6 mL⟧')}]`));
    flags(code, scars('', '⟦1.2 mL triamcinolone 40 mg/mL⟧'));
    flags(code, scars('', tac('40 mg/mL', '⟦1.1 mL⟧').replace('triamcinolone', 'triamcinalone acetonide')));
  });

  it('counts what an event of the same day got, and not that of another day', () => {
    const later = (on: string, entry: string): string =>
      `${scars('', tac('40 mg/mL', '0.6 mL'))}events:\n  - {on: ${on}, kind: steroid injection, outcome: well, injected: ${entry}}\n`;
    flags(code, later('2026-03-02', tac('40 mg/mL', '⟦0.6 mL⟧')), { today: '2026-05-01' });
    silent(code, later('2026-04-02', tac('40 mg/mL', '0.6 mL')), { today: '2026-05-01' });
    flags(code, later('2026-04-02', tac('40 mg/mL', '⟦1.6 mL⟧')), { today: '2026-05-01' });
  });

  it('warns of more than 20 mg on a square centimeter', () => {
    const [finding] = flags(code, scars('', tac('40 mg/mL', '⟦0.6 mL⟧', ', area: 1 cm2')), {
      severity: 'warning',
    });
    assert.match(messageOf(finding!), /^24 mg of triamcinolone on each cm²/);
    silent(code, scars('', tac('40 mg/mL', '0.5 mL', ', area: 1 cm2')));
    silent(code, scars('', tac('40 mg/mL', '0.6 mL', ', area: 6 cm2')));
  });

  it('is silent at the limit, for other drugs, and where nothing can be reckoned', () => {
    silent(code, scars('', tac('40 mg/mL', '1 mL')));
    silent(code, scars('', tac('10 mg/mL', '1.1 mL'), tac('10 mg/mL', '1.3 mL'), tac('10 mg/mL', '1.6 mL')));
    silent(code, scars('', '{drug: fluorouracil, concentration: 50 mg/mL, volume: 2 mL}'));
    silent(code, scars('', '{drug: triamcinolone, volume: 3 mL}'));
    silent(code, scars('', tac('??', '3 mL')));
    silent(code, scars('', '{drug: saline instead of triamcinolone, concentration: 40 mg/mL, volume: 3 mL}'));
  });

  it('warns for every sum over the limit and for none below, whatever the parts are', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 80 }), { minLength: 1, maxLength: 5 }), (tenths) => {
        const text = scars(
          '',
          ...tenths.map((tenth) => tac('10 mg/mL', `${(tenth / 10).toFixed(1).replace(/\.0$/, '')} mL`)),
        );
        const sum = tenths.reduce((all, one) => all + one, 0);
        assert.equal(judgeBy(code, text).length, sum > 40 ? 1 : 0);
      }),
      { numRuns: 40 },
    );
  });
});
