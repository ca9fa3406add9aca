import { messageOf } from '../../../src/checks/index.ts';
import assert from 'node:assert/strict';
import { checkOf } from '../../../src/checks/index.ts';
import type { Severity } from '../../../src/note/tree/finding.ts';
import { referenceTables } from '../../../src/practice/tables.ts';
import { flags, judgeBy, silent } from '../tester.ts';
import { sent, tests } from './_specimen.ts';

const verdicts: Readonly<Record<string, string>> = {
  // - silent, i information, w warning, E error; in the order of `tests`
  formalin: '---EEEEiwiEi-',
  Michel: 'www-wwww-wwww',
  'immunofluorescence transport': 'www-wwwwwwwww',
  saline: 'wii------i---',
  'bacteriostatic saline': 'wii-iiii-i---',
  'sterile container': 'wiii-----i---',
  glutaraldehyde: 'iiiEEEEii-Eii',
  alcohol: '--iEEEEi-iEi-',
  'viral transport medium': 'wiiiiii--iii-',
  'cell culture medium': 'wii-iii--i---',
  'snap-frozen': 'wii-iiii-i-i-',
  'bacterial transport medium': 'iiii--ii-iiii',
  'sterile water': 'iiii---i-iiii',
};

const meaning: Readonly<Record<string, Severity | undefined>> = {
  i: 'information',
  w: 'warning',
  E: 'error',
};

describe('specimen/wrong-medium', () => {
  it('names the medium that serves', () => {
    const [finding] = judgeBy(
      'specimen/wrong-medium',
      sent('{label: A, medium: formalin, tests: [direct immunofluorescence]}'),
    );
    assert.match(messageOf(finding!), /take another sample into Michel/);
  });

  it('judges every medium of the table', () => {
    assert.deepEqual(Object.keys(verdicts).sort(), referenceTables.media.rows.map(({ name }) => name).sort());
    assert.deepEqual(
      [...tests].sort(),
      referenceTables.tests.rows
        .filter(({ like, tissue }) => like === undefined && tissue !== false)
        .map(({ name }) => name)
        .sort(),
    );
  });

  for (const [medium, letters] of Object.entries(verdicts))
    it(`${medium}: every test`, () => {
      const found = tests.map(
        (test) =>
          judgeBy('specimen/wrong-medium', sent(`{label: A, medium: ${medium}, tests: [${test}]}`))[0]
            ?.severity,
      );
      assert.deepEqual(
        found,
        Array.from(letters, (letter) => meaning[letter]),
      );
    });

  it('points at the medium, names the tests, and says it once', () => {
    const [finding] = flags(
      'specimen/wrong-medium',
      sent('{label: A, medium: ⟦10% formalin⟧, tests: [H&E, DIF, bacterial culture]}'),
      { severity: 'error' },
    );
    assert.equal(finding?.args['tests'], 'direct immunofluorescence, bacterial culture');
    assert.equal(finding.related.length, 2);
  });

  it('has no fix: the record can not mend it', () => {
    assert.equal(checkOf('specimen/wrong-medium')?.fix, undefined);
  });

  it('is silent where medium or test are not known or pending, and on the right jars', () => {
    silent('specimen/wrong-medium', sent('{label: A, medium: ??, tests: [direct immunofluorescence]}'));
    silent(
      'specimen/wrong-medium',
      sent('{label: A, medium: green liquid, tests: [direct immunofluorescence]}'),
    );
    silent('specimen/wrong-medium', sent('{label: A, medium: formalin, tests: [??]}'));
    silent('specimen/wrong-medium', sent('{label: A, medium: formalin}'));
    silent(
      'specimen/wrong-medium',
      sent('[{label: A, medium: formalin, tests: H&E}, {label: B, medium: "Michel\'s", tests: DIF}]'),
    );
  });
});
