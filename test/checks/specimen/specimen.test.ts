import assert from 'node:assert/strict';
import { flags, silent } from '../tester.ts';
import { note, sent } from './_specimen.ts';

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
