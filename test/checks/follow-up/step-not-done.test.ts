import { flags, silent } from '../tester.ts';
import { received } from './_results.ts';

describe('follow-up/step-not-done', () => {
  const code = 'follow-up/step-not-done';
  const step = (next: string, done = ''): string =>
    received(`          diagnosis: psoriasis\n          told: 2026-03-10\n          next: ${next}\n${done}`);
  it('gives a step four weeks from telling', () => {
    silent(code, step('topical treatment'), { today: '2026-04-07' });
    flags(code, step('⟦topical treatment⟧'), { today: '2026-04-08', severity: 'warning' });
  });
  it('gives a cancer two weeks', () => {
    const cancer = step('⟦excision⟧').replace('psoriasis', 'melanoma');
    flags(code, cancer, { today: '2026-03-25' });
    silent(code, cancer.replace(/[⟦⟧]/g, ''), { today: '2026-03-24' });
  });
  it('counts from the day that is planned, a visit to look again from the visit', () => {
    silent(code, step('recheck in 6 months'), { today: '2026-09-30' });
    flags(code, step('⟦recheck in 6 months⟧'), { today: '2026-10-01' });
    silent(code, step('excision on 2026-05-04'), { today: '2026-06-01' });
  });
  it('is content with any word that it was done, and with none that denies it', () => {
    for (const done of ['2026-03-20', 'yes', 'started by K.O.'])
      silent(code, step('topical treatment', `          done: ${done}\n`), { today: '2026-06-08' });
    for (const done of ['no', 'not yet', '??'])
      flags(code, step('⟦topical treatment⟧', `          done: "${done}"\n`.replace('"??"', '??')), {
        today: '2026-06-08',
      });
  });
  it('takes none needed in many words for no step', () => {
    for (const next of ['none', 'none needed', 'nothing', 'no treatment needed', 'reassurance'])
      silent(code, step(next), { today: '2026-06-08' });
  });
  it('takes a visit to look again for a step only on its day, and for none without one', () => {
    for (const next of [
      'RTC prn',
      'come back if needed',
      'routine follow up',
      'Return as needed',
      'nothing more',
    ])
      silent(code, step(next), { today: '2027-12-01' });
    for (const next of ['skin check 6 months', 'recheck 6 mo', 'follow up in six months']) {
      silent(code, step(next), { today: '2026-09-30' });
      flags(code, step(`⟦${next}⟧`), { today: '2026-10-01' });
    }
    for (const next of ['skin check 1 yr', 'yearly skin check']) {
      silent(code, step(next), { today: '2027-03-30' });
      flags(code, step(`⟦${next}⟧`), { today: '2027-03-31' });
    }
  });
  it('takes a visit for something else for the step that it is', () => {
    for (const next of [
      'return for excision',
      'follow up with the surgeon',
      'recheck and treat',
      'check labs',
    ])
      flags(code, step(`⟦${next}⟧`), { today: '2026-04-08' });
    // A cancer is not closed by looking again some day.
    const cancer = step('⟦RTC prn⟧').replace('psoriasis', 'melanoma');
    flags(code, cancer, { today: '2026-03-25' });
  });
});
