import { flags, silent } from '../tester.ts';
import { sent } from './_specimen.ts';

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
