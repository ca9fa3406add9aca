import assert from 'node:assert/strict';
import { checkOf } from '../../../src/checks/index.ts';
import type { Severity } from '../../../src/note/tree/finding.ts';
import { referenceTables } from '../../../src/practice/tables.ts';
import { flags, judgeBy, silent } from '../tester.ts';

const note = (...procedures: readonly (readonly string[])[]): string =>
  `visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n${procedures
    .map((lines) => lines.map((line, at) => `  ${at === 0 ? '- ' : '  '}${line}\n`).join(''))
    .join('')}`;

const sent = (specimen: string): string =>
  note(['site: left cheek', 'method: shave', `specimen: ${specimen}`]);

describe('specimen/missing', () => {
  it('flags every method that takes tissue', () => {
    for (const method of [
      'shave',
      'saucerization',
      'snip',
      'curettage',
      'punch',
      'incisional',
      'ellipse',
      'ED&C',
    ])
      flags('specimen/missing', note(['⟦site⟧: left cheek', `method: ${method}`]), { severity: 'warning' });
  });

  it('is silent where the specimen is named, nothing was taken, or the method is not known', () => {
    silent('specimen/missing', sent('{label: A}'));
    silent('specimen/missing', sent('not sent, skin tag'));
    silent('specimen/missing', sent('??'));
    silent('specimen/missing', note(['site: left cheek', 'method: cryotherapy']));
    silent('specimen/missing', note(['site: left cheek', 'method: whatever']));
    silent('specimen/missing', note(['site: left cheek']));
  });
});

describe('specimen/not-sent-without-reason', () => {
  it('flags "not sent" alone, and words that were meant for something else', () => {
    for (const words of ['not sent', 'Not sent.', 'none', '{not-sent: no}'])
      flags(
        'specimen/not-sent-without-reason',
        sent(words.includes('{') ? '{not-sent: ⟦no⟧}' : `⟦${words}⟧`),
        {
          severity: 'warning',
        },
      );
    const [finding] = flags('specimen/not-sent-without-reason', sent('⟦formalin⟧'));
    assert.equal(finding?.form, 'misplaced');
  });

  it('is silent on a reason', () => {
    for (const words of [
      'not sent, benign skin tag',
      'not sent - patient declined',
      '{not-sent: benign skin tag}',
      '??',
    ])
      silent('specimen/not-sent-without-reason', sent(words));
  });
});

describe('specimen/medium-missing', () => {
  it('flags each container', () => {
    flags(
      'specimen/medium-missing',
      sent('{label: A, tests: [routine histology]}').replace('specimen', '⟦specimen⟧'),
      {
        severity: 'warning',
      },
    );
    flags('specimen/medium-missing', sent('[{⟦label⟧: A}, {label: B, medium: formalin}]'));
  });

  it('is silent where it is said, pending, or nothing was sent', () => {
    silent('specimen/medium-missing', sent('{label: A, medium: formalin}'));
    silent('specimen/medium-missing', sent('{label: A, medium: ??}'));
    silent('specimen/medium-missing', sent('not sent, skin tag'));
  });
});

/**
 * Every medium with every test. Formalin and other fixatives against immunofluorescence: collection pages of
 * immunodermatology laboratories and J Am Acad Dermatol 2010; culture: manuals of two hospital laboratories; frozen
 * section: submission guide; Michel medium: its product sheet; routine histology: laboratory manuals. Information is
 * from memory.
 */
const tests = [
  'routine histology',
  'special stains',
  'immunohistochemistry',
  'direct immunofluorescence',
  'bacterial culture',
  'fungal culture',
  'mycobacterial culture',
  'viral culture',
  'PCR',
  'electron microscopy',
  'frozen section',
  'flow cytometry',
  'gene rearrangement',
];
const verdicts: Readonly<Record<string, string>> = {
  // - silent, i information, w warning, E error; in the order of `tests`
  formalin: '---EEEEi-iEi-',
  Michel: 'www-wwwwwwwww',
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
};
const meaning: Readonly<Record<string, Severity | undefined>> = {
  i: 'information',
  w: 'warning',
  E: 'error',
};

describe('specimen/wrong-medium', () => {
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

describe('specimen/too-long-in-medium', () => {
  const on = (day: string, medium = 'Michel', tests = 'DIF'): string =>
    sent(`{label: A, medium: ${medium}, tests: ${tests}, sent: ${day}}`);

  it('flags the day of sending', () => {
    flags('specimen/too-long-in-medium', on('⟦2026-03-08⟧'), { severity: 'warning' });
    flags('specimen/too-long-in-medium', on('⟦2026-03-05⟧', 'saline'));
  });

  it('is silent within the time, and where it does not matter', () => {
    silent('specimen/too-long-in-medium', on('2026-03-07'));
    silent('specimen/too-long-in-medium', on('2026-03-04', 'saline'));
    silent('specimen/too-long-in-medium', on('2026-03-20', 'formalin', 'H&E'));
    silent('specimen/too-long-in-medium', on('??'));
  });
});

describe('specimen labels', () => {
  const two = (first: string, second: string): string =>
    note(
      ['site: left cheek', `specimen: {${first}, medium: formalin}`],
      ['site: right cheek', `specimen: {${second}, medium: formalin}`],
    );

  it('missing: a warning of several, information of an only one', () => {
    flags(
      'specimen/label-missing',
      two('label: A', 'tests: H&E').replace(/specimen(?!.*label)/, '⟦specimen⟧'),
      { severity: 'warning' },
    );
    flags('specimen/label-missing', sent('{medium: formalin}').replace('specimen', '⟦specimen⟧'), {
      severity: 'information',
    });
    silent('specimen/label-missing', two('label: A', 'label: ??'));
    silent('specimen/label-missing', sent('not sent, skin tag'));
  });

  it('twice: an error at the second, with the first beside it', () => {
    const [finding] = flags('specimen/duplicate-label', two('label: A', 'label: ⟦a⟧'), { severity: 'error' });
    assert.equal(finding?.related.length, 1);
    flags('specimen/duplicate-label', sent('[{label: A, medium: formalin}, {label: ⟦A⟧, medium: Michel}]'));
    silent('specimen/duplicate-label', two('label: A', 'label: B'));
    silent('specimen/duplicate-label', two('label: A', 'label: A1'));
    silent('specimen/duplicate-label', two('label: ??', 'label: ??'));
  });

  it('on the lid: a warning', () => {
    for (const words of ['lid', 'on the lid', 'cap'])
      flags('specimen/label-on-lid', sent(`{label: A, label-on: ⟦${words}⟧}`), { severity: 'warning' });
    for (const words of ['container', 'jar, not lid', 'lid and container', '??'])
      silent('specimen/label-on-lid', sent(`{label: A, label-on: "${words}"}`));
  });
});
