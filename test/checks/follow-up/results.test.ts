import assert from 'node:assert/strict';
import { messageOf } from '../../../src/checks/index.ts';
import { flags, judgeBy, silent } from '../tester.ts';

const note = (specimen: string, rest = ''): string => `visit: 2026-03-02
patient: {id: C-1, born: 1961-08-09, weight: 62 kg}
procedures:
  - site: left upper back
    method: shave
    closure: none
    specimen:
${specimen}${rest}`;
const sent = '      label: A\n      sent: 2026-03-02\n';
const received = (rest: string): string =>
  note(`${sent}      results:\n        - received: 2026-03-09\n${rest}`);

describe('follow-up/specimen-not-sent', () => {
  const code = 'follow-up/specimen-not-sent';
  const unsent = note('      label: A\n').replace('specimen', '⟦specimen⟧');
  it('speaks from the second working day after the visit on', () => {
    flags(code, unsent, { today: '2026-03-04', severity: 'warning' });
    silent(code, unsent.replace(/[⟦⟧]/g, ''), { today: '2026-03-03' });
  });
  it('is silent once it is sent, once a result is there, and where the day is still to be filled in or cannot be read', () => {
    for (const rest of [
      '      sent: 2026-03-05\n',
      '      results: {received: 2026-03-09, diagnosis: nevus}\n',
      '      sent: 03/05/2026\n',
    ])
      silent(code, note(`      label: A\n${rest}`), { today: '2026-05-04' });
  });
  it('is silent about what was not sent with a reason', () => {
    silent(code, note('').replace('specimen:\n', 'specimen: not sent, typical skin tag\n'), {
      today: '2026-05-04',
    });
  });
});

describe('follow-up/result-overdue', () => {
  it('counts one day as one', () => {
    const said = (today: string): string =>
      messageOf(judgeBy('follow-up/result-overdue', note(sent), { today })[0]!);
    assert.match(said('2026-03-17'), / 1 day ago\./);
    assert.match(said('2026-03-18'), / 2 days ago\./);
  });
  const code = 'follow-up/result-overdue';
  const outstanding = note('      label: A\n      sent: ⟦2026-03-02⟧\n');
  const plain = outstanding.replace(/[⟦⟧]/g, '');
  it('counts ten working days', () => {
    silent(code, plain, { today: '2026-03-16' });
    flags(code, outstanding, { today: '2026-03-17', severity: 'warning' });
  });
  it('is an error from four weeks past the limit on, and never falls silent', () => {
    flags(code, outstanding, { today: '2026-04-12', severity: 'warning' });
    flags(code, outstanding, { today: '2026-04-13', severity: 'error' });
    flags(code, outstanding, { today: '2036-04-13', severity: 'error' });
  });
  it('gives cultures of fungi six weeks and of mycobacteria eight', () => {
    const fungal = plain.replace('label: A', 'tests: [fungal culture]');
    silent(code, fungal, { today: '2026-04-13' });
    flags(code, outstanding.replace('label: A', 'tests: [fungal culture]'), { today: '2026-04-14' });
    flags(code, outstanding.replace('label: A', 'tests: [AFB culture]'), { today: '2026-04-28' });
    silent(code, plain.replace('label: A', 'tests: [AFB culture]'), { today: '2026-04-27' });
  });
  it('waits for the culture after the histology of the same specimen has come', () => {
    const both = (results: string): string =>
      note(
        `      tests: [routine histology, fungal culture]\n      sent: ⟦2026-03-02⟧\n      results:\n${results}`,
      );
    flags(code, both('        - {received: 2026-03-09, diagnosis: granuloma, told: 2026-03-10}\n'), {
      today: '2026-04-14',
    });
    silent(
      code,
      both(
        '        - {received: 2026-03-09, diagnosis: granuloma, told: 2026-03-10}\n        - {received: 2026-04-10, diagnosis: no growth, told: 2026-04-10}\n',
      ).replace(/[⟦⟧]/g, ''),
      { today: '2026-04-14' },
    );
  });
  it('says one thing only of a container from which two tests are overdue, and one of each of two containers', () => {
    const two = note('      tests: [routine histology, fungal culture]\n      sent: ⟦2026-03-02⟧\n');
    const [finding] = flags(code, two, { today: '2026-05-04', severity: 'error' });
    assert.equal(finding?.args['to'], '2026-03-16');
    flags(
      code,
      note('').replace(
        'specimen:\n',
        'specimen:\n      - {medium: formalin, sent: ⟦2026-03-02⟧}\n      - {medium: formalin, sent: ⟦2026-03-02⟧}\n',
      ),
      { today: '2026-03-17' },
    );
  });
  it('says one thing only of a specimen that was never sent', () => {
    silent(code, note('      label: A\n'), { today: '2026-05-04' });
  });
  it('does not take an empty or an unfilled result for one that came', () => {
    flags(code, note('      sent: ⟦2026-03-02⟧\n      results: [{received: ??}]\n'), { today: '2026-03-17' });
  });
  it('says nothing where no day is known', () => {
    silent(code, plain, {});
  });
});

describe('follow-up/not-told', () => {
  const code = 'follow-up/not-told';
  const untold = (diagnosis: string): string =>
    note(`${sent}      results:\n        - received: ⟦2026-03-09⟧\n          diagnosis: ${diagnosis}\n`);
  const plain = (diagnosis: string): string => untold(diagnosis).replace(/[⟦⟧]/g, '');
  it('gives an ordinary result three working days', () => {
    silent(code, plain('psoriasis'), { today: '2026-03-12' });
    flags(code, untold('psoriasis'), { today: '2026-03-13', severity: 'warning' });
    flags(code, untold('psoriasis'), { today: '2026-04-09', severity: 'error' });
  });
  it('gives a cancer one working day, whatever its words', () => {
    for (const diagnosis of [
      'melanoma in situ',
      'SCC in situ',
      'nodular basal cell carcinoma',
      'consistent with basal cell carcinoma',
      'suspicious for melanoma',
      'Merkel cell carcinoma',
      'metastatic adenocarcinoma',
    ])
      flags(code, untold(diagnosis), { today: '2026-03-11', severity: 'error' });
  });
  it('is not alarmed by a cancer that is denied, past or less likely', () => {
    for (const diagnosis of [
      'compound nevus, no evidence of melanoma',
      'scar, no residual carcinoma',
      'negative for malignancy',
      'dermal scar, history of melanoma',
    ])
      silent(code, plain(diagnosis), { today: '2026-03-11' });
  });
  it('counts a telling without a day, and not one that is still to be filled in', () => {
    silent(code, received('          diagnosis: psoriasis\n          told: {by: K.O., how: telephone}\n'), {
      today: '2026-03-20',
    });
    flags(code, received('          diagnosis: psoriasis\n          told: ⟦??⟧\n'), { today: '2026-03-20' });
  });
});

describe('follow-up/attempts-only', () => {
  const code = 'follow-up/attempts-only';
  const tried = (how: string): string =>
    received(`          diagnosis: psoriasis\n          told: ⟦{on: 2026-03-10, by: K.O., how: ${how}}⟧\n`);
  it('takes no attempt for telling', () => {
    for (const how of [
      'voicemail',
      'left voicemail',
      '"telephone, no answer"',
      'could not be reached',
      'LVM',
    ])
      flags(code, tried(how), { today: '2026-03-13', severity: 'warning' });
  });
  it('takes what reaches the patient for telling', () => {
    for (const how of ['telephone', 'visit', 'letter', 'portal message', 'in person'])
      silent(code, tried(how).replace(/[⟦⟧]/g, ''), { today: '2026-03-13' });
  });
  it('is said once', () => {
    silent('follow-up/not-told', tried('voicemail').replace(/[⟦⟧]/g, ''), { today: '2026-03-13' });
  });
});

describe('follow-up/no-plan', () => {
  const code = 'follow-up/no-plan';
  const told = (diagnosis: string, next = ''): string =>
    received(`          diagnosis: ${diagnosis}\n          told: 2026-03-10\n${next}`);
  it('asks for a plan of a cancer a working day after telling, and of other grave findings after three', () => {
    flags(code, told('⟦basal cell carcinoma⟧'), { today: '2026-03-12', severity: 'warning' });
    silent(code, told('basal cell carcinoma'), { today: '2026-03-11' });
    flags(code, told('⟦severely dysplastic nevus⟧'), { today: '2026-03-16' });
    silent(code, told('severely dysplastic nevus'), { today: '2026-03-13' });
    flags(code, told('⟦insufficient tissue⟧'), { today: '2026-03-16' });
  });
  it('asks for none of what is harmless, and is content with any plan or with none needed', () => {
    silent(code, told('seborrheic keratosis'), { today: '2026-06-12' });
    for (const next of ['none needed', 'excision booked 2026-07-01', 'referred'])
      silent(code, told('basal cell carcinoma', `          next: ${next}\n`), { today: '2026-06-12' });
  });
});

describe('a melanoma after which nothing is needed', () => {
  const code = 'follow-up/no-plan';
  const after = (diagnosis: string, next: string): string =>
    received(`          diagnosis: ${diagnosis}\n          told: 2026-03-10\n          next: ${next}\n`);
  it('is asked about', () => {
    flags(code, after('melanoma in situ', '⟦none needed⟧'), { today: '2026-03-10', severity: 'warning' });
    flags(code, after('"superficial spreading melanoma, 0.4 mm"', '⟦none⟧'));
  });
  it('is none where it was denied, or something follows', () => {
    silent(code, after('"compound nevus, no melanoma"', 'none needed'));
    silent(code, after('melanoma in situ', 'wide excision on 2026-04-01'));
  });
});

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
  it('counts from the time that the step names', () => {
    silent(code, step('recheck in 6 months'), { today: '2026-10-07' });
    flags(code, step('⟦recheck in 6 months⟧'), { today: '2026-10-08' });
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
});
