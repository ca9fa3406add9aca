import assert from 'node:assert/strict';
import { messageOf } from '../../../src/checks/index.ts';
import { referenceTables } from '../../../src/practice/tables.ts';
import { flags, silent } from '../tester.ts';
import { lidocaine, note, withEpinephrine } from './notes.ts';

const child = 'id: C-1, age: 7 years, weight: 23 kg';

describe('dose/advisory-passed', () => {
  it('names the guideline that a child’s dose passes', () => {
    // AAD 2016 for children: 1.5 to 2.0 mg/kg plain, 3.0 to 4.5 mg/kg with epinephrine.
    silent('dose/advisory-passed', note([lidocaine('4.6 mL')], child));
    const [finding] = flags('dose/advisory-passed', note([lidocaine('⟦4.7 mL⟧')], child), {
      severity: 'warning',
    });
    assert.match(
      messageOf(finding!),
      /46 mg \(2 mg\/kg at 23 kg, printed as 1\.5 to 2\.0 mg\/kg\) of the AAD guideline 2016/,
    );
    silent('dose/advisory-passed', note([withEpinephrine('10.3 mL')], child));
    flags('dose/advisory-passed', note([withEpinephrine('⟦10.4 mL⟧')], child));
  });

  it('says that a label advises against bupivacaine under 18 years', () => {
    const bupivacaine = (volume: string): string =>
      `agent: bupivacaine, concentration: 0.25%, volume: ${volume}`;
    const [finding] = flags('dose/advisory-passed', note([bupivacaine('⟦1 mL⟧')], child), {
      severity: 'warning',
    });
    assert.match(messageOf(finding!), /advises against bupivacaine/);
    flags('dose/advisory-passed', note([bupivacaine('⟦1 mL⟧')], 'id: C-1, age: 17 years, weight: 60 kg'));
    silent('dose/advisory-passed', note([bupivacaine('1 mL')], 'id: C-1, age: 18 years, weight: 60 kg'));
  });

  it('leaves 30% off an amide under 6 months', () => {
    // 3 mg/kg × 0.7 × 6 kg = 12.6 mg; the AAD has 12 mg.
    const infant = 'id: C-1, age: 5 months, weight: 6 kg';
    silent('dose/advisory-passed', note([lidocaine('1.2 mL')], infant));
    flags('dose/advisory-passed', note([lidocaine('⟦1.3 mL⟧')], infant), { severity: 'warning' });
  });

  it('is no louder than information where the value is from memory', () => {
    const tables = { ...referenceTables, authority: 'UK' };
    // BNF, from memory: 3 mg/kg, below the 4.5 mg/kg of the product characteristics.
    silent('dose/advisory-passed', note([lidocaine('12 mL')], 'id: C-1, age: 40 years, weight: 40 kg'), {
      tables,
    });
    flags('dose/advisory-passed', note([lidocaine('⟦13 mL⟧')], 'id: C-1, age: 40 years, weight: 40 kg'), {
      tables,
      severity: 'information',
    });
  });

  it('is silent for adults within the label, and past the limit', () => {
    silent('dose/advisory-passed', note([lidocaine('27 mL')]));
    silent('dose/advisory-passed', note([lidocaine('8 mL')], child));
  });
});
