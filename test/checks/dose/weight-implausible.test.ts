import assert from 'node:assert/strict';
import { messageOf } from '../../../src/checks/index.ts';
import { fixed, flags, silent } from '../tester.ts';
import { lidocaine, note } from './notes.ts';

describe('dose/weight-implausible', () => {
  const of = (weight: string, age: string): string =>
    note([lidocaine('1 mL')], `id: C-1, age: ${age}, weight: ${weight}`);

  it('asks about pounds typed as kilograms, and offers them as a correction of the record', () => {
    const [finding] = flags('dose/weight-implausible', of('⟦44 kg⟧', '5 years'), { severity: 'warning' });
    assert.match(messageOf(finding!), /Was it 44 lb\?/);
    assert.ok(
      fixed('dose/weight-implausible', of('44 kg', '5 years'), 'correct the record: 44 lb').includes(
        'weight: 44 lb',
      ),
    );
  });

  it('asks about kilograms typed as pounds', () => {
    const [finding] = flags('dose/weight-implausible', of('⟦62 lb⟧', '64 years').replace('62 lb', '45 lb'));
    assert.match(messageOf(finding!), /Was it 45 kg\?/);
  });

  it('asks about what fits in neither unit', () => {
    const [finding] = flags('dose/weight-implausible', of('⟦4.4 kg⟧', '5 years'));
    assert.match(messageOf(finding!), /14\.3 to 28\.9 kg is usual/);
  });

  it('asks about a number that would be in the middle of the age with the other unit', () => {
    // 71 lb are 32.2 kg; newborns weigh 3.3 kg in the middle, 7.5 lb are 3.4 kg.
    for (const [weight, age, instead] of [
      ['71 kg', '10 years', '71 lb'],
      ['7.5 kg', '2 days', '7.5 lb'],
      ['33 lb', '10 years', '33 kg'],
      ['140 kg', '17 years', '140 lb'],
    ] as const) {
      const [finding] = flags('dose/weight-implausible', of(`⟦${weight}⟧`, age));
      assert.ok(messageOf(finding!).includes(`Was it ${instead}?`));
    }
    // 46 kg is heavy at 8 years, and 46 lb light: 20.9 kg.
    silent('dose/weight-implausible', of('46 kg', '8 years'));
  });

  it('is silent for the light and the heavy of an age, and without an age', () => {
    // CDC growth charts: a boy of 10 years weighs 32.1 kg in the middle.
    for (const [weight, age] of [
      ['32.5 kg', '10 years'],
      ['10 kg', '5 years'],
      ['31 kg', '5 years'],
      ['58 kg', '10 years'],
      ['100 kg', '17 years'],
      ['180 kg', '50 years'],
      ['3.4 kg', '1 day'],
    ])
      silent('dose/weight-implausible', of(weight!, age!));
    silent('dose/weight-implausible', note([lidocaine('1 mL')], 'id: C-1, weight: 12 kg'));
  });
});
