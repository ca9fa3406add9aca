import { flags, silent } from '../tester.ts';
import { sent, two } from './_specimen.ts';

describe('specimen/label-missing', () => {
  it('is a warning of several, information of an only one', () => {
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
});
