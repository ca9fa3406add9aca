import { flags, silent } from '../tester.ts';

const full = `wheal: 1
visit: 2026-03-02
clinician: K.O.
patient: {id: C-1, born: 1961-08-09, allergies: none}
consent: written
time-out: done
procedures:
  - site: left upper back
    lesion: brown macule 5 mm
    question: rule out melanoma
    method: deep shave
    depth: deep dermis
    dressing: none
    complications: none
aftercare: {given: spoken}
`;

/** The note without the row of a key, and with a mark where the finding belongs. */
const without = (key: string, mark: [from: string, to: string]): string =>
  full.replace(new RegExp(`^ *${key}: .*\\n`, 'm'), '').replace(...mark);

describe('keys that a careful record has', () => {
  for (const [key, severity] of [
    ['clinician', 'warning'],
    ['consent', 'warning'],
    ['time-out', 'information'],
    ['aftercare', 'information'],
  ] as const)
    it(`record/missing-${key} points at the top of the note`, () => {
      flags(`record/missing-${key}`, without(key, ['wheal', '⟦⟧wheal']), { severity });
      silent(`record/missing-${key}`, full);
      silent(`record/missing-${key}`, full.replace(new RegExp(`^${key}: .*$`, 'm'), `${key}: ??`));
    });

  it('record/missing-allergies: absent is not the same as none or unknown', () => {
    const asked = (allergies: string): string => full.replace('allergies: none', `allergies: ${allergies}`);
    flags('record/missing-allergies', full.replace(', allergies: none', '').replace('patient', '⟦patient⟧'), {
      severity: 'warning',
    });
    for (const answer of ['none', 'NKDA', 'unknown', '??', '[bacitracin]'])
      silent('record/missing-allergies', asked(answer));
  });

  it('record/missing-age: either the date of birth or the age will do', () => {
    flags('record/missing-age', full.replace(' born: 1961-08-09,', '').replace('patient', '⟦patient⟧'), {
      severity: 'warning',
    });
    silent('record/missing-age', full);
    silent('record/missing-age', full.replace('born: 1961-08-09', 'age: 64 years'));
    silent('record/missing-age', full.replace('born: 1961-08-09', 'dob: 1961-08-09'));
  });

  it('says nothing of a patient who is not there at all: that has a finding of its own', () => {
    const nobody = full.replace(/^patient.*\n/m, '');
    silent('record/missing-age', nobody);
    silent('record/missing-allergies', nobody);
  });

  for (const key of ['lesion', 'question', 'depth', 'dressing', 'complications'])
    it(`record/missing-${key} points at the first key of the procedure`, () => {
      flags(`record/missing-${key}`, without(key, ['site', '⟦site⟧']), { severity: 'information' });
      silent(`record/missing-${key}`, full);
      silent(`record/missing-${key}`, full.replace(new RegExp(`${key}: .*`), `${key}: ??`));
    });

  it('points at each procedure that lacks the key, and at no other', () => {
    flags(
      'record/missing-complications',
      `${full.replace(/aftercare.*\n/, '')}  - ⟦site⟧: left ear\n    method: punch\n  - {⟦site⟧: right ear}\n`,
    );
  });

  it('does not ask again for the lesion of another sample of the same place', () => {
    const second = `${full.replace(/aftercare.*\n/, '')}  - {site: left upper back, same-as: A, method: punch}\n`;
    silent('record/missing-lesion', second);
    silent('record/missing-question', second);
  });

  it('asks for no question where nothing is sent', () => {
    const note = full.replace('question: rule out melanoma', 'specimen: not sent, typical skin tag');
    silent('record/missing-question', note);
    flags(
      'record/missing-question',
      note
        .replace('not sent, typical skin tag', '[{not-sent: typical skin tag}, {label: A}]')
        .replace('site', '⟦site⟧'),
    );
  });

  it('is not asked where the method has nothing of the kind', () => {
    const bare = (method: string): string =>
      `visit: 2026-03-02\nprocedures:\n  - site: left ear\n    method: ${method}\n`;
    for (const method of ['cryotherapy', 'incision and drainage', 'nail clipping', 'intralesional injection'])
      silent('record/missing-depth', bare(method));
    for (const method of ['cryotherapy', 'incision and drainage', 'electrodesiccation'])
      silent('record/missing-question', bare(method));
    for (const method of ['cryotherapy', 'nail clipping', 'intralesional injection'])
      silent('record/missing-dressing', bare(method));
    for (const method of ['cryotherapy', 'nail clipping']) silent('hemostasis/missing', bare(method));
  });

  it('is asked where tissue went to a laboratory, or the method is not known', () => {
    const bare = (...rows: string[]): string =>
      `visit: 2026-03-02\nprocedures:\n  - ⟦site⟧: left ear\n${rows.map((row) => `    ${row}\n`).join('')}`;
    flags('record/missing-question', bare('method: incision and drainage', 'specimen: {label: A}'));
    flags('record/missing-question', bare('method: nail clipping'));
    flags('record/missing-dressing', bare('method: incision and drainage'));
    flags('record/missing-depth', bare('method: something new'));
    flags('record/missing-depth', bare('method: nail biopsy'));
    flags('hemostasis/missing', bare('method: nail biopsy'));
  });

  it('do not seem to be missing where a row of their part can not be read', () => {
    for (const key of ['depth', 'dressing', 'complications'])
      silent(`record/missing-${key}`, full.replace(`    ${key}:`, `    ${key}`));
    // The other procedures are read as ever.
    flags(
      'record/missing-depth',
      full.replace('    depth:', '    depth').replace('aftercare', '  - ⟦site⟧: left ear\naftercare'),
    );
  });
});

describe('a key that is there, misspelt or behind damage', () => {
  for (const [code, right, wrong] of [
    ['record/missing-consent', 'consent: written', 'consnet: written'],
    ['record/missing-clinician', 'clinician: K.O.', 'clincian: K.O.'],
    ['record/missing-allergies', 'allergies: none', 'alergies: none'],
    ['record/missing-age', 'born: 1961-08-09', 'bron: 1961-08-09'],
    ['record/missing-depth', 'depth: deep dermis', 'dpeth: deep dermis'],
    ['record/missing-dressing', 'dressing: none', 'dresing: none'],
  ] as const)
    it(`${code}: ${wrong} is one fault`, () => {
      const text = full.replace(right, wrong);
      silent(code, text);
      flags('shape/unknown-key', text.replace(wrong.split(':')[0]!, `⟦${wrong.split(':')[0]!}⟧`));
    });

  it('asks for nothing that a damaged row may have swallowed', () => {
    const damaged = full.replace('    depth: deep dermis\n', '    depth deep dermis\n');
    silent('record/missing-depth', damaged);
    silent('record/missing-consent', full.replace('consent: written', 'consent written'));
  });
});
