import assert from 'node:assert/strict';
import { flags, silent } from '../tester.ts';
import { sent, two } from './_specimen.ts';

describe('specimen/duplicate-label', () => {
  it('is an error at the second, with the first beside it', () => {
    const [finding] = flags('specimen/duplicate-label', two('label: A', 'label: ⟦a⟧'), { severity: 'error' });
    assert.equal(finding?.related.length, 1);
    flags('specimen/duplicate-label', sent('[{label: A, medium: formalin}, {label: ⟦A⟧, medium: Michel}]'));
    silent('specimen/duplicate-label', two('label: A', 'label: B'));
    silent('specimen/duplicate-label', two('label: A', 'label: A1'));
    silent('specimen/duplicate-label', two('label: ??', 'label: ??'));
  });
});
