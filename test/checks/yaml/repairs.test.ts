import assert from 'node:assert/strict';
import { checkOf } from '../../../src/checks/index.ts';
import { readNote } from '../../../src/note/read.ts';
import { referenceTables } from '../../../src/practice/tables.ts';
import { fixed, flags, judge, judgeBy, silent } from '../tester.ts';

const before =
  'visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: left upper back\n    method: punch\n';
const codes = (text: string): string[] =>
  judge(text)
    .findings.map(({ code }) => code)
    .filter((code) => /^(yaml|shape)\//.test(code));

/** The note with one more row in its procedure, which has exactly one finding of reading, fixed by its fix. */
function trap(code: string, row: string, repaired?: string): void {
  it(`${code}: ${row.replace(/[⟦⟧]/g, '').trim()}`, () => {
    const marked = `${before}${row}\n    complications: none\n`;
    const text = marked.replace(/[⟦⟧]/g, '');
    flags(code, marked);
    assert.deepEqual(codes(text), [code]);
    if (repaired === undefined) return;
    const result = fixed(code, text, '');
    assert.equal(result, `${before}${repaired}\n    complications: none\n`);
    assert.deepEqual(
      codes(result).filter((one) => one !== 'shape/pending'),
      [],
    );
  });
}

describe('a line break that was lost', () => {
  const note = (patient: string): string => `visit: 2026-03-02\npatient:\n${patient}\n  born: 1961-04-12\n`;
  const lost = note('  allergies: none  implants: pacemaker');

  it('puts no key into quotes', () => {
    flags('yaml/syntax', note('  allergies: none  ⟦implants⟧: pacemaker'), { severity: 'error' });
    assert.deepEqual(codes(lost), ['yaml/syntax']);
    assert.equal(
      fixed('yaml/syntax', lost, 'line of its own'),
      note('  allergies: none\n  implants: pacemaker'),
    );
    assert.equal(
      fixed('yaml/syntax', lost.replaceAll('\n', '\r\n'), 'line of its own'),
      note('  allergies: none\n  implants: pacemaker').replaceAll('\n', '\r\n'),
    );
  });

  it('puts no key at the beginning of a value into quotes', () => {
    assert.equal(
      fixed('yaml/syntax', 'visit: 2026-03-02\nremarks: consent: written\n', 'line of its own'),
      'visit: 2026-03-02\nremarks: \nconsent: written\n',
    );
  });

  it('has no fix where an opening bracket was lost, and leaves the dose unjudged', () => {
    const text =
      'visit: 2026-03-02\nprocedures:\n  - site: chin\n    anesthetic: agent: lidocaine, volume: 60 mL}\n';
    const [finding] = judgeBy('yaml/syntax', text);
    assert.ok(
      finding !== undefined &&
        checkOf('yaml/syntax')?.fix?.({ text, tables: referenceTables }, finding).length === 0,
    );
    assert.deepEqual(
      codes(text).filter((code) => code === 'yaml/needs-quotes'),
      [],
    );
    assert.equal(judge(text).dose?.judged, false);
  });

  it('leaves the dose unjudged until it is put right', () => {
    const dose = '\nanesthetic: {agent: lidocaine, concentration: 1%, volume: 2 mL}\n';
    assert.equal(judge(note('  allergies: none  weight: 60 kg') + dose).dose?.judged, false);
    assert.equal(judge(note('  allergies: none\n  weight: 60 kg') + dose).dose?.judged, true);
  });

  it('is none before a word that is no key', () => {
    silent('yaml/syntax', note('  allergies: rash vs: hives'));
  });
});

describe('what YAML takes for something else', () => {
  describe('a comma between brackets', () => {
    trap(
      'yaml/comma-splits',
      '    anesthetic: {agent: lidocaine, concentration: 1%, epinephrine: ⟦1:100,000⟧, volume: 1 mL}',
      '    anesthetic: {agent: lidocaine, concentration: 1%, epinephrine: "1:100,000", volume: 1 mL}',
    );
    trap(
      'yaml/comma-splits',
      '    closure: {technique: ⟦pulled, then taped, then watched⟧, layer: skin}',
      '    closure: {technique: "pulled, then taped, then watched", layer: skin}',
    );
    trap('yaml/comma-splits', '    anesthetic: [⟦1.5 mL lidocaine 1% with epinephrine 1:100,000⟧]');

    it('never reads a part of the value', () => {
      for (const [typed, key] of [
        ['epinephrine: 1:100,000', 'epinephrine'],
        ['volume: 1,5 mL', 'volume'],
      ] as const) {
        const text = `${before}    anesthetic: {agent: lidocaine, concentration: 1%, ${typed}}\n`;
        const injection = readNote(text).value?.procedures?.[0]?.anesthetic?.[0];
        assert.ok(injection?.[key] !== undefined);
        assert.equal(injection[key].value, undefined);
        assert.equal(injection[key].text, typed.slice(key.length + 2));
      }
    });

    it('leaves a key alone that is still being typed', () => {
      const text = `${before}    anesthetic: {agent: lidocaine, vol}\n`;
      silent('yaml/comma-splits', text);
      assert.equal(readNote(text).value?.procedures?.[0]?.anesthetic?.[0]?.agent?.value, 'lidocaine');
    });

    it('leaves lists of codes and texts alone', () => {
      silent(
        'yaml/comma-splits',
        `${before}    codes: [11104,11105]\n    dressing: [petrolatum,gauze, paper tape]\n`,
      );
    });
  });

  describe('a # sign', () => {
    trap('yaml/comment-swallows', '    lesion: papule ⟦#2 on left⟧', '    lesion: "papule #2 on left"');
    trap(
      'yaml/comment-swallows',
      '    closure: {technique: none ⟦#2⟧, layer: skin}',
      '    closure: {technique: "none #2", layer: skin}',
    );

    it('is a comment with a blank behind it, or on a row of its own', () => {
      silent(
        'yaml/comment-swallows',
        `#1 of two\n${before}    lesion: papule # on the left\n    #none\n    depth: mid dermis #\n`,
      );
    });
  });

  describe('a sign at the beginning of a value', () => {
    for (const typed of [
      '> 6 mm',
      '>6 mm',
      '| x',
      '* papule',
      '*papule',
      '*left back',
      '& x',
      '&x y',
      '!important',
      '!important x',
      '@home',
      '%5',
      '`x',
      ',x',
      '] x',
      '}',
      '- papule',
      '? papule',
      '[old] papule',
      '{4 mm} papule',
      "'brown' macule",
    ])
      trap('yaml/needs-quotes', `    lesion: ⟦${typed}⟧`, `    lesion: "${typed}"`);
    trap('yaml/needs-quotes', '    lesion: ⟦"brown" macule⟧', `    lesion: '"brown" macule'`);
    trap('yaml/needs-quotes', '    question: ⟦AK vs: SCC⟧', '    question: "AK vs: SCC"');
    trap('yaml/needs-quotes', '    question: ⟦AK vs: SCC⟧  # both', '    question: "AK vs: SCC"  # both');
    trap(
      'yaml/needs-quotes',
      '    closure: {technique: ⟦@home⟧, layer: skin}',
      '    closure: {technique: "@home", layer: skin}',
    );
    trap(
      'yaml/needs-quotes',
      '    closure: {technique: ⟦a: b⟧, layer: skin}',
      '    closure: {technique: "a: b", layer: skin}',
    );
    trap('yaml/bare-question-mark', '    depth: ⟦?⟧', '    depth: ??');
    trap(
      'yaml/bare-question-mark',
      '    closure: {technique: ⟦?⟧, layer: skin}',
      '    closure: {technique: ??, layer: skin}',
    );

    it('is text in a block of text, in quotes and within a value', () => {
      const text = `${before}    remarks: |\n      * one\n      @ two: three\n      > "four\n    lesion: a > b & c * d @ e\n    question: "? AK vs: SCC"\n`;
      assert.deepEqual(codes(text), []);
    });
  });

  describe('a row that is not finished', () => {
    trap('yaml/missing-colon', '    ⟦lesion⟧');
    trap('yaml/missing-colon', '    ⟦depth:mid dermis⟧', '    depth: mid dermis');
    trap('yaml/unclosed-quote', '    lesion: ⟦"brown macule⟧', '    lesion: "brown macule"');
    trap('yaml/unclosed-quote', "    lesion: ⟦'brown macule⟧", "    lesion: 'brown macule'");
    trap('yaml/unclosed-bracket', '    dressing: ⟦[⟧petrolatum, gauze', '    dressing: [petrolatum, gauze]');
    trap('yaml/runs-on', '    lesion: brown macule\n      ⟦depth⟧');

    it('leaves the values around it as they were', () => {
      const text = `${before}    lesion: "brown\n    anesthetic: {agent: lidocaine, concentration: 1%, volume: 40 mL}\n`;
      const procedure = readNote(text).value?.procedures?.[0];
      assert.equal(procedure?.lesion?.value, undefined);
      assert.equal(procedure?.anesthetic?.[0]?.volume?.text, '40 mL');
      assert.deepEqual(
        judge(text.replace('C-1', 'C-1, weight: 62 kg, age: 64 years'))
          .findings.map(({ code }) => code)
          .filter((code) => code === 'dose/over-limit'),
        ['dose/over-limit'],
      );
    });

    it('does not miss the closing quote behind a sign that is written twice', () => {
      for (const lesion of ["'macule, ''halo'''", String.raw`"macule \\"`, String.raw`"}\\"`])
        silent('yaml/unclosed-quote', `${before}    lesion: ${lesion}\n`);
    });

    it('does not take a value over two rows for a fault', () => {
      silent('yaml/runs-on', `${before}    lesion: brown macule with an irregular\n      border\n`);
    });
  });
});
