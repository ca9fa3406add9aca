import assert from 'node:assert/strict';
import { flags, silent } from '../tester.ts';

const note = (consent: string, procedures: string): string =>
  `visit: 2026-03-02\nconsent: ${consent}\nprocedures: ${procedures}\n`;

describe('record/consent-declined', () => {
  it('flags the word where a procedure is recorded all the same', () => {
    const [finding] = flags(
      'record/consent-declined',
      note('⟦declined⟧', '[{site: left ear, method: punch}, {site: right ear}]'),
      { severity: 'error' },
    );
    assert.equal(finding?.related.length, 1);
    flags(
      'record/consent-declined',
      note('⟦declined⟧', '[{site: left ear, anesthetic: {agent: lidocaine}}]'),
    );
  });

  it('reads who declined, and what else was declined than the procedure', () => {
    for (const consent of [
      'Declined by the patient',
      'pt refused consent',
      'refused by mother',
      'patient declines',
    ])
      flags('record/consent-declined', note(`⟦${consent}⟧`, '[{site: left ear, method: punch}]'));
    for (const consent of ['declined photos, written consent', 'declined interpreter, verbal consent'])
      silent('record/consent-declined', note(consent, '[{site: left ear, method: punch}]'));
  });

  it('is silent where consent was given, where nothing was done, and where it is not yet known', () => {
    for (const consent of ['written', 'verbal', 'guardian', '??'])
      silent('record/consent-declined', note(consent, '[{site: left ear, method: punch}]'));
    silent('record/consent-declined', note('declined', '[]'));
    silent(
      'record/consent-declined',
      note('declined', '[{site: left ear, remarks: wants to think about it}]'),
    );
    silent('record/consent-declined', note('declined', '[{site: left ear, specimen: not sent}]'));
  });
});
