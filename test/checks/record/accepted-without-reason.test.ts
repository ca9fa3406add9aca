import assert from 'node:assert/strict';
import { flags, silent } from '../tester.ts';
import { note } from './_accepted.ts';

describe('record/accepted-without-reason', () => {
  it('flags what is accepted without a word on why', () => {
    flags('record/accepted-without-reason', note('{⟦check⟧: record/missing-lesion, by: K.O.}'), {
      severity: 'warning',
    });
  });

  it('asks who accepted it, where the reason is given', () => {
    const [finding] = flags(
      'record/accepted-without-reason',
      note('{⟦check⟧: record/missing-lesion, reason: seen before}'),
      { severity: 'information' },
    );
    assert.equal(finding?.form, 'nobody');
  });

  it('is silent where reason and name are given, or not yet known', () => {
    silent(
      'record/accepted-without-reason',
      note('{check: record/missing-lesion, reason: seen before, by: K.O.}'),
    );
    silent('record/accepted-without-reason', note('{check: record/missing-lesion, reason: ??}'));
  });

  it('looks into every part that can accept', () => {
    const bare = '{⟦check⟧: record/missing-lesion}';
    flags(
      'record/accepted-without-reason',
      `visit: 2026-03-02
procedures:
  - site: left ear
    anesthetic: {agent: lidocaine, accepted: [${bare}]}
    specimen: {label: A, accepted: [${bare}]}
events:
  - {on: 2026-03-03, kind: bleeding, accepted: [${bare}]}
accepted: [${bare}]
`,
    );
  });
});
