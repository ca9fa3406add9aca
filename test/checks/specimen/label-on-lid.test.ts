import { flags, silent } from '../tester.ts';
import { sent } from './_specimen.ts';

describe('specimen/label-on-lid', () => {
  it('is a warning', () => {
    for (const words of ['lid', 'on the lid', 'cap'])
      flags('specimen/label-on-lid', sent(`{label: A, label-on: ⟦${words}⟧}`), { severity: 'warning' });
    for (const words of ['container', 'jar, not lid', 'lid and container', '??'])
      silent('specimen/label-on-lid', sent(`{label: A, label-on: "${words}"}`));
  });
});
