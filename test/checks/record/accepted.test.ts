import assert from 'node:assert/strict';
import { fixed, flags, silent } from '../tester.ts';

const note = (accepted: string): string =>
  `visit: 2026-03-02\nprocedures:\n  - site: left ear\n    accepted: [${accepted}]\n`;

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
