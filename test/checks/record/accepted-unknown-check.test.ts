import assert from 'node:assert/strict';
import { fixed, flags, silent } from '../tester.ts';
import { note } from './_accepted.ts';

describe('record/accepted-unknown-check', () => {
  const accept = (check: string): string => note(`{check: ${check}, reason: seen before, by: K.O.}`);

  it('flags a code that is none, and offers the nearest', () => {
    const [finding] = flags('record/accepted-unknown-check', accept('⟦record/mising-lesion⟧'), {
      severity: 'warning',
    });
    assert.deepEqual(finding?.args, { check: 'record/mising-lesion', nearest: 'record/missing-lesion' });
    assert.equal(
      fixed('record/accepted-unknown-check', accept('missing-lesion'), 'record/missing-lesion'),
      accept('record/missing-lesion'),
    );
    assert.equal(flags('record/accepted-unknown-check', accept('⟦the dose⟧'))[0]?.form, 'main');
    flags('record/accepted-unknown-check', accept('⟦constructor⟧'));
  });

  it('is silent for a code that exists, even where it finds nothing here', () => {
    silent('record/accepted-unknown-check', accept('dose/over-limit'));
    silent('record/accepted-unknown-check', accept('??'));
  });
});
