import assert from 'node:assert/strict';
import fc from 'fast-check';
import { slipsOf } from '../../../../src/checks/lookups.ts';
import { wordsOf } from '../../../../src/note/words/mentions/read.ts';
import { isOneSlip } from '../../../../src/note/words/mentions/slips.ts';
import { referenceTables } from '../../../../src/practice/tables.ts';
import { flags, silent } from '../../../checks/tester.ts';

/** The words of a text as they are read, those that were typed otherwise in brackets. */
const read = (text: string): string =>
  slipsOf(referenceTables)
    .read(wordsOf(text))
    .map(({ text: word, slip }) => (slip === true ? `[${word}]` : word))
    .join(' ');

describe('slips in free words', () => {
  it('are read where they are one letter from one long word of a danger', () => {
    assert.equal(read('takes warfrin for the valve'), 'takes [warfarin] for the valve');
    assert.equal(read('cirhosis'), '[cirrhosis]');
    assert.equal(read('has a pacemkaer'), 'has a [pacemaker]');
    assert.equal(read('on bloodthinners'), 'on [blood] [thinners]');
  });

  it('leave words that are words, known ones and short ones', () => {
    for (const text of [
      'injection',
      'metoprolol',
      'wound edge',
      'latx',
      'patient tolerated the procedure well',
    ])
      assert.equal(read(text), text);
  });

  it('are a warning at most, and denied like any other word', () => {
    const note = (implants: string): string =>
      `visit: 2026-03-02\npatient: {id: C-1, implants: none}\nremarks: "${implants}"\nprocedures:\n  - {site: chin, method: shave, hemostasis: ⟦electrosurgery⟧}\n`;
    flags('device/electrosurgery', note('defibrilator in the chest'), { severity: 'warning' });
    silent('device/electrosurgery', note('no defibrilator').replace(/[⟦⟧]/g, ''));
  });

  it('are as many as the letters that differ', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[a-z]{6,12}$/), fc.nat(), fc.nat(25), (word, place, letter) => {
        const at = place % word.length;
        const other = String.fromCharCode(97 + letter);
        assert.ok(isOneSlip(word.slice(0, at) + word.slice(at + 1), word));
        assert.ok(isOneSlip(word.slice(0, at) + other + word.slice(at), word));
        assert.equal(isOneSlip(word.slice(0, at) + other + word.slice(at + 1), word), other !== word[at]);
        assert.ok(!isOneSlip(`${word}xy`, word));
      }),
    );
  });
});
