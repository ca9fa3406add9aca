import assert from 'node:assert/strict';
import { checkOf, messageOf } from '../../../src/checks/index.ts';
import { referenceTables } from '../../../src/practice/tables.ts';
import { fixed, flags, judgeBy, silent } from '../tester.ts';

const injected = (keys: string): string =>
  `visit: 2026-03-02\nprocedures:\n  - site: left upper back\n    anesthetic: {agent: lidocaine, ${keys}}\n`;
const patient = (keys: string): string => `visit: 2026-03-02\npatient: {id: C-1, ${keys}}\n`;

const fixesOf = (code: string, text: string): readonly string[] => {
  const [finding] = judgeBy(code, text);
  assert.ok(finding !== undefined);
  const fixes = checkOf(code)?.fix?.({ text, tables: referenceTables }, finding) ?? [];
  return fixes.map(({ title, sure, kind }) => `${title}${sure ? '!' : ''} (${kind})`);
};

describe('quantity/unreadable', () => {
  it('points at the value', () => {
    flags('quantity/unreadable', injected('volume: ⟦about 1 mL⟧'), { severity: 'error' });
    flags('quantity/unreadable', injected('volume: ⟦1-2 mL⟧'), { severity: 'error' });
    flags('quantity/unreadable', patient('age: ⟦adult⟧'), { severity: 'error' });
  });

  it('is mild about yes and no', () => {
    const [finding] = flags('quantity/unreadable', 'procedures:\n  - photo: ⟦maybe⟧\n', {
      severity: 'warning',
    });
    assert.equal(messageOf(finding!), '“maybe” is neither yes nor no. Write yes or no for photo.');
  });

  it('is a warning for a length, on which no dose depends', () => {
    silent('quantity/unreadable', 'procedures:\n  - margin: 2-3 mm\n');
    for (const row of ['margin: ⟦2-5 mm⟧', 'margin: ⟦narrow⟧', 'size: ⟦about 6 mm⟧'])
      flags('quantity/unreadable', `procedures:\n  - ${row}\n`, { severity: 'warning' });
    flags('quantity/unreadable', injected('volume: 1 mL, area: ⟦large⟧'), { severity: 'error' });
  });

  it('takes a margin of none for a margin', () => {
    for (const margin of ['none', 'no margin', '0 mm'])
      silent('quantity/unreadable', `procedures:\n  - margin: ${margin}\n`);
    flags('quantity/unreadable', patient('height: ⟦none⟧'));
  });

  it('says of an estimate what is missing', () => {
    const [finding] = flags('quantity/unreadable', injected('volume: ⟦~1 mL⟧'), { severity: 'error' });
    assert.match(messageOf(finding!), /“~1 mL” is an estimate.*the one amount/);
  });

  it('is silent where nothing is known yet', () => {
    silent('quantity/unreadable', injected('volume: ??'));
    silent('quantity/unreadable', injected('volume:'));
  });
});

describe('quantity/estimate', () => {
  const code = 'quantity/estimate';

  it('says that a weight is used which is only about right', () => {
    for (const weight of [
      '~62 kg',
      'ca. 62 kg',
      'about 62 kg',
      '62 kg est.',
      '62 kg (estimated)',
      '62 kg approx',
    ]) {
      const [finding] = flags(code, patient(`weight: ⟦${weight}⟧`), { severity: 'information' });
      assert.match(messageOf(finding!), /judged by 62 kg.*`weighed: estimated`/);
      silent('quantity/unreadable', patient(`weight: ${weight}`));
    }
  });

  it('judges by that weight what a weight is judged by', () => {
    flags('quantity/implausible', patient('weight: ~⟦620 kg⟧'));
    silent(code, patient('weight: ~62'));
    flags('quantity/unit-missing', patient('weight: ~⟦62⟧'));
  });

  it('is silent where the note says it beside the weight, and of a weight that was measured', () => {
    for (const words of ['estimated', 'est.', 'estimated 2026-03-02'])
      silent(code, patient(`weight: ~62 kg, weighed: ${words}`));
    silent(code, patient('weight: 62 kg, weighed: measured'));
    silent('quantity/unreadable', patient('weight: 62 kg, weighed: estimated'));
  });
});

describe('quantity/not-understood', () => {
  it('points at the words, and does not use the value', () => {
    const [finding] = flags('quantity/not-understood', injected('volume: 1.5 mL ⟦each side⟧'), {
      severity: 'error',
    });
    assert.match(messageOf(finding!), /“each side” after 1\.5 mL/);
  });

  it('is an error in a dictated line where the dose could be another, else a warning', () => {
    const line = (words: string): string => `anesthetic: 1.5 mL lidocaine 1% ${words}\n`;
    flags('quantity/not-understood', line('⟦x 2⟧'), { severity: 'error' });
    flags('quantity/not-understood', line('and ⟦1 mL bupivacaine 0.25%⟧'), { severity: 'error' });
    flags('quantity/not-understood', line('⟦slowly⟧'), { severity: 'warning' });
    silent('quantity/not-understood', line('with epinephrine 1:100,000, buffered 9:1'));
  });
});

describe('how a weight was learned, behind the weight', () => {
  it('is sent to its own key', () => {
    for (const words of ['(measured)', 'measured', 'stated', 'per patient', '(from chart)']) {
      const [finding] = flags('quantity/not-understood', patient(`weight: 62 kg ⟦${words}⟧`), {
        severity: 'error',
      });
      assert.match(messageOf(finding!), /Write `weight: 62 kg`.*`weighed`/);
    }
    const [finding] = flags('quantity/not-understood', patient('weight: 62 kg ⟦with shoes⟧'));
    assert.match(messageOf(finding!), /remarks/);
    silent('quantity/not-understood', patient('weight: 62 kg, weighed: measured'));
  });
});

describe('quantity/unit-missing', () => {
  it('offers the units, none before the other where two are usual', () => {
    const text = patient('weight: 62');
    flags('quantity/unit-missing', patient('weight: ⟦62⟧'), { severity: 'error' });
    assert.deepEqual(fixesOf('quantity/unit-missing', text), [
      'correct the record: 62 kg (record)',
      'correct the record: 62 lb (record)',
    ]);
    assert.equal(fixed('quantity/unit-missing', text, '62 lb'), patient('weight: 62 lb'));
  });

  it('is a warning for an age that may be months, and information for one that can only be years', () => {
    flags('quantity/unit-missing', patient('age: ⟦7⟧'), { severity: 'warning' });
    flags('quantity/unit-missing', patient('age: ⟦36⟧'), { severity: 'warning' });
    flags('quantity/unit-missing', patient('age: ⟦37⟧'), { severity: 'information' });
    flags('quantity/unit-missing', patient('age: ⟦64⟧'), { severity: 'information' });
    assert.equal(fixed('quantity/unit-missing', patient('age: 64'), '64 years'), patient('age: 64 years'));
  });
});

describe('quantity/unknown-unit and quantity/wrong-unit', () => {
  it('point at the unit', () => {
    flags('quantity/unknown-unit', injected('volume: 2 ⟦drops⟧'), { severity: 'error' });
    flags('quantity/unknown-unit', patient('weight: 62 ⟦kgg⟧'), { severity: 'error' });
    flags('quantity/wrong-unit', injected('volume: 1.5 ⟦mg⟧'), { severity: 'error' });
    assert.equal(fixed('quantity/unknown-unit', patient('weight: 62 kgg'), 'kg'), patient('weight: 62 kg'));
  });

  it('say what was meant and what is wanted', () => {
    const [finding] = judgeBy('quantity/wrong-unit', injected('volume: 1.5 kg'));
    assert.equal(
      messageOf(finding!),
      'kg is a unit for a body weight, not for a volume. Check what was meant and write it like this: 1.5 mL.',
    );
  });
});

describe('quantity/decimal-comma', () => {
  it('offers what the comma can mean, and prefers none', () => {
    flags('quantity/decimal-comma', 'anesthetic:\n  - volume: ⟦1,5⟧ mL\n', { severity: 'error' });
    assert.deepEqual(fixesOf('quantity/decimal-comma', 'anesthetic:\n  - amount: 1,500 mg\n'), [
      'correct the record: 1500 (record)',
      'correct the record: 1.5 (record)',
    ]);
    assert.equal(
      fixed('quantity/decimal-comma', injected('volume: "1,5 mL"'), '1.5'),
      injected('volume: "1.5 mL"'),
    );
  });
});

describe('quantity/not-positive and quantity/implausible', () => {
  it('look at the size of the number', () => {
    flags('quantity/not-positive', injected('volume: ⟦0 mL⟧'), { severity: 'error' });
    flags('quantity/not-positive', injected('volume: ⟦-1 mL⟧'), { severity: 'error' });
    flags('quantity/implausible', injected('volume: ⟦150 mL⟧'), { severity: 'warning' });
    flags('quantity/implausible', patient('weight: ⟦900 kg⟧'), { severity: 'warning' });
    silent('quantity/not-positive', 'procedures:\n  - margin: 0 mm\n');
    silent('quantity/implausible', patient('weight: 2.1 kg, height: 47 cm'));
  });
});

describe('quantity/strength-unsaid', () => {
  it('asks for the strength of the epinephrine', () => {
    flags('quantity/strength-unsaid', injected('epinephrine: ⟦yes⟧'), { severity: 'error' });
    flags('quantity/strength-unsaid', 'anesthetic: 1.5 mL lidocaine 1% with ⟦epi⟧\n', { severity: 'error' });
    silent('quantity/strength-unsaid', injected('epinephrine: no'));
  });
});

describe('quantity/mixture-order', () => {
  it('asks whether the parts were swapped, since the dose grows by it', () => {
    flags('quantity/mixture-order', injected('buffered: ⟦1:9⟧'), { severity: 'error' });
    assert.deepEqual(fixesOf('quantity/mixture-order', injected('buffered: 1:9')), [
      'correct the record: 9:1 (record)',
    ]);
    assert.equal(
      fixed('quantity/mixture-order', injected('buffered: 1:9'), '9:1'),
      injected('buffered: 9:1'),
    );
    silent('quantity/mixture-order', injected('buffered: yes'));
  });
});
