import assert from 'node:assert/strict';
import { checkOf } from '../../../src/checks/index.ts';
import { referenceTables } from '../../../src/practice/tables.ts';
import { fixed, flags, judgeBy, silent } from '../tester.ts';

const injected = (volume: string): string =>
  `anesthetic: {agent: lidocaine, concentration: 1%, volume: ${volume}}\n`;

describe('notations that are known to be misread', () => {
  it('point at what is misread, and are mended with the smallest edit', () => {
    flags('quantity/leading-zero', injected('⟦.5⟧ mL'), { severity: 'information' });
    flags('quantity/trailing-zero', injected('⟦1.0⟧ mL'), { severity: 'information' });
    flags('quantity/misread-unit', injected('1 ⟦cc⟧'), { severity: 'information' });
    assert.equal(fixed('quantity/leading-zero', injected('.5 mL'), 'Write 0.5'), injected('0.5 mL'));
    assert.equal(fixed('quantity/trailing-zero', injected('1.0 mL'), 'Write 1'), injected('1 mL'));
    assert.equal(fixed('quantity/misread-unit', injected('1 cc'), 'Write mL'), injected('1 mL'));
    const text = injected('.5 mL');
    const [finding] = judgeBy('quantity/leading-zero', text);
    const [fix] = checkOf('quantity/leading-zero')!.fix!({ text, tables: referenceTables }, finding!);
    assert.deepEqual(fix!.edits, [{ start: text.indexOf('.5'), end: text.indexOf('.5'), text: '0' }]);
    assert.equal(fix!.sure, true);
  });

  it('are silent about sizes, weights and stitches that end in a zero', () => {
    silent(
      'quantity/trailing-zero',
      'patient: {weight: 62.0 kg}\nprocedures:\n  - {size: 4.0 mm, margin: 1.0 mm, closure: {size: 4-0, count: 10}}\n',
    );
    silent('quantity/trailing-zero', injected('10 mL'));
    silent('quantity/misread-unit', injected('1 ml'));
  });

  it('are mended inside of quotes, and left alone where the text is escaped', () => {
    assert.equal(fixed('quantity/leading-zero', injected('".5 mL"'), 'Write 0.5'), injected('"0.5 mL"'));
    const escaped = injected('"\\x2e5 mL"');
    const [finding] = judgeBy('quantity/leading-zero', escaped);
    assert.deepEqual(
      checkOf('quantity/leading-zero')!.fix!({ text: escaped, tables: referenceTables }, finding!),
      [],
    );
  });

  it('are found in a dictated line', () => {
    flags('quantity/misread-unit', 'anesthetic: 1.5 ⟦cc⟧ lidocaine 1%\n');
    flags('quantity/leading-zero', 'anesthetic: ⟦.5⟧ mL lidocaine 1%\n');
  });
});
