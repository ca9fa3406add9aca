import { flags, silent } from '../tester.ts';
import { received } from './_results.ts';

describe('follow-up/told-unclear', () => {
  const code = 'follow-up/told-unclear';
  const told = (diagnosis: string, how: string): string =>
    received(
      `          diagnosis: ${diagnosis}\n          told: {on: 2026-03-10, by: K.O., how: ${how}}\n          next: excision 2026-04-07\n`,
    );
  it('asks about words that do not say that the patient heard a result that asks for a step', () => {
    for (const how of ['letter mailed', 'portal message', 'see chart', 'will call tomorrow'])
      flags(code, told('basal cell carcinoma', `⟦${how}⟧`), { severity: 'warning' });
  });
  it('asks nothing of a result that asks for nothing, of what the patient heard, and of an attempt', () => {
    silent(code, told('seborrheic keratosis', 'letter mailed'));
    for (const how of ['telephone', 'read by patient', 'voicemail'])
      silent(code, told('basal cell carcinoma', how));
  });
  it('asks nothing where the patient heard it another time', () => {
    silent(
      code,
      received(
        '          diagnosis: basal cell carcinoma\n          told: [{on: 2026-03-10, how: letter}, {on: 2026-03-12, how: visit}]\n',
      ),
    );
  });
});
