import assert from 'node:assert/strict';
import { chartKey, ByPatient } from '../../../src/note/chart-numbers.ts';
import { readNote } from '../../../src/note/read.ts';
import { signatureEdit } from '../../../src/note/signature/sign.ts';
import { verify } from '../../../src/note/signature/verify.ts';
import { applyEdits } from '../../../src/note/tree/edit.ts';
import { legible } from '../../../src/note/text/characters.ts';
import { plainWord } from '../../../src/note/words/word-table.ts';
import { fixed, flags, judge, silent } from '../tester.ts';

const note = (allergies: string, preparation = 'chlorhexidine', volume = '1 mL'): string =>
  `wheal: 1
visit: 2026-03-02
patient: {id: C-1, born: 1961-08-09, weight: 62 kg, allergies: [${allergies}], implants: [pacemaker]}
procedures:
  - site: left upper back
    method: shave
    anesthetic: [{agent: lidocaine, concentration: 1%, volume: ${volume}}]
    preparation: ${preparation}
    hemostasis: [electrosurgery]
`;

/** Ways of writing a word that looks the same, or nearly. */
const disguises: readonly (readonly [string, (word: string) => string])[] = [
  ['a soft hyphen', (word) => `${word.slice(0, 4)}\u00ad${word.slice(4)}`],
  ['a space of no width', (word) => `${word.slice(0, 3)}\u200b${word.slice(3)}`],
  ['a joiner at its end', (word) => `${word}\u2060`],
  ['a mark of the byte order inside', (word) => `${word.slice(0, 2)}\uFEFF${word.slice(2)}`],
  [
    'Cyrillic letters',
    (word) => word.replace(/[aeopcyx]/g, (letter) => 'аеорсух'['aeopcyx'.indexOf(letter)]!),
  ],
  [
    'wide letters',
    (word) => Array.from(word, (one) => String.fromCharCode(one.charCodeAt(0) + 0xfee0)).join(''),
  ],
  ['a turned direction', (word) => `\u202d${word}\u202c`],
];

const errors = (text: string): readonly string[] =>
  judge(text)
    .findings.filter(({ severity, code }) => severity === 'error' && !code.startsWith('yaml/'))
    .map(({ code }) => code);

describe('characters that are not what they seem', () => {
  const plain = errors(note('chlorhexidine'));

  it('hide nothing that is there to be found', () => {
    assert.ok(plain.includes('allergy/preparation') || plain.some((code) => code.startsWith('allergy/')));
    assert.ok(plain.some((code) => code.startsWith('device/')));
  });

  for (const [what, disguise] of disguises) {
    for (const [place, text] of [
      ['a value', note(disguise('chlorhexidine'))],
      ['what it is compared with', note('chlorhexidine', disguise('chlorhexidine'))],
      ['a key', note('chlorhexidine').replace('preparation:', `${disguise('preparation')}:`)],
      ['a device', note('chlorhexidine').replace('pacemaker', disguise('pacemaker'))],
      ['the current', note('chlorhexidine').replace('electrosurgery', disguise('electrosurgery'))],
      ['an agent', note('chlorhexidine').replace('agent: lidocaine', `agent: ${disguise('lidocaine')}`)],
    ] as const)
      it(`are read through and reported: ${what} in ${place}`, () => {
        assert.deepEqual(errors(text), plain);
        const codes = judge(text).findings.map(({ code }) => code);
        assert.ok(codes.some((code) => code === 'yaml/look-alike' || code === 'yaml/unseen-character'));
        assert.equal(judge(text).dose?.judged, judge(note('chlorhexidine')).dose?.judged);
      });

    it(`make no other chart number: ${what}`, () => {
      assert.equal(chartKey(disguise('C-20417xa')), chartKey('C-20417xa'));
      const byPatient = new ByPatient();
      byPatient.set('a', 'patient: {id: capex-20417}\n');
      byPatient.set('b', `patient: {id: ${disguise('capex-20417')}}\n`);
      byPatient.set('c', `patient: {${disguise('id')}: capex-20417}\nprocedures: [{id: other}]\n`);
      const all = byPatient.of('capex-20417');
      assert.ok(all.has('b'));
      assert.ok(all.has('c') || !judgedAs('capex-20417', `patient: {${disguise('id')}: capex-20417}\n`));
    });
  }

  it('are marked where they are', () => {
    flags('yaml/unseen-character', note('chlor⟦\u00ad⟧hexidine'), { severity: 'warning' });
    flags('yaml/unseen-character', note('⟦\u202e⟧latex⟦\u202c⟧'), { severity: 'error' });
    flags('yaml/look-alike', note('⟦lаtex⟧'), { severity: 'warning' });
    flags('yaml/look-alike', note('latex', 'chlorhexidine', '⟦１⟧ mL'), { severity: 'warning' });
    flags('yaml/look-alike', note('latex', 'chlorhexidine', '1⟦\u00a0⟧mL'), { severity: 'information' });
    flags('yaml/unseen-character', `${note('latex')}# a remark ⟦\u2066⟧of the scribe\n`);
  });

  it('are none in a text of another script, a formula, a picture or a mark of the byte order', () => {
    for (const text of [
      `\uFEFF${note('latex')}`,
      `${note('latex')}remarks: αβ-blocker, β-lactam, 5 µg, Δ9, Ω\n`,
      `${note('latex')}remarks: боль в спине, пациент, нос\n`,
      `${note('latex')}remarks: "👍🏽 👩‍⚕️ ❤️"\n`,
      `${note('latex')}remarks: "می‌خواهم"\n`,
      `${note('latex')}remarks: naïve – “café” ½ … 5×4 mm²\n`,
    ]) {
      silent('yaml/look-alike', text);
      silent('yaml/unseen-character', text);
    }
  });

  it('are put right in one step, except where the direction turns', () => {
    assert.equal(
      fixed('yaml/unseen-character', note('chlor\u00adhexidine'), 'Take the invisible character out'),
      note('chlorhexidine'),
    );
    assert.equal(fixed('yaml/look-alike', note('lаtex'), 'Write the usual characters'), note('latex'));
    assert.throws(() =>
      fixed('yaml/unseen-character', note('\u202elatex'), 'Take the invisible character out'),
    );
  });

  it('are read in as many characters, so that every range is that of the text', () => {
    for (const text of ['a\u00a0b', 'lаtex', '１：２', 'a\rb\r\r\nc', 'x:\u200b\u200by', 'non\u2011breaking'])
      assert.equal(legible(text).length, text.length);
  });

  it('are no other word', () => {
    for (const [a, b] of [
      ['non\u2011adherent\u00a0pad', 'non-adherent pad'],
      ['ﬁne gauze', 'fine gauze'],
      ['Dakin’s', "dakin's"],
    ] as const)
      assert.equal(plainWord(a), plainWord(b));
  });

  it('are part of what is signed, as they were typed', () => {
    const text = note('chlor\u00adhexidine', 'isopropyl\u00a0alcohol');
    const edit = signatureEdit(readNote(text), 'K.O.', '2026-03-02 16:40');
    assert.ok(typeof edit === 'object');
    const signed = applyEdits(text, [edit]);
    const kept = verify(readNote(signed));
    assert.ok(kept.kind === 'signed' && kept.changes.length === 0);
    const changed = verify(readNote(signed.replace('\u00ad', '')));
    assert.ok(changed.kind === 'signed' && changed.changes.length > 0);
  });

  it('a line may end in CR alone, or in CR CR LF', () => {
    const text = note('chlorhexidine');
    for (const end of ['\r', '\r\r\n', '\r\n'])
      assert.deepEqual(errors(text.replace(/\n/g, end)), plain, JSON.stringify(end));
  });
});

const judgedAs = (id: string, text: string): boolean => readNote(text).value?.patient?.id?.value === id;
