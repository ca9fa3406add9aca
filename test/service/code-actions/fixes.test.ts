import assert from 'node:assert/strict';
import fc from 'fast-check';
import { applyEdits } from '../../../src/note/tree/edit.ts';
import { catalogue } from '../../../src/checks/index.ts';
import { fixAll, fixesAt, type OfferedFix } from '../../../src/service/index.ts';
import { analysed } from '../notes.ts';
import { times } from '../../share.ts';

const offered = (text: string): readonly OfferedFix[] => fixesAt(analysed(text), 0, text.length);

/** The text after the fix with a title that contains `title`; of a code, where one is named. */
function fixed(text: string, title: string, code?: string): string {
  const fixes = offered(text);
  const fix = fixes.find((one) => one.title.includes(title) && (code === undefined || one.code === code));
  assert.ok(fix !== undefined, `${title} is not offered: ${fixes.map((one) => one.title).join('; ')}`);
  return applyEdits(text, fix.edits);
}

const head = 'wheal: 1\nvisit: 2026-03-02\n';
const patient = 'patient: {id: C-1, born: 1961-08-09, allergies: none}\n';

describe('fixes', () => {
  it('put in what is missing where the schema has it, with the indentation of its part', () => {
    const note = `${head}${patient}procedures:\n  - site: left cheek # here\n    specimen: not sent, benign\n`;
    assert.equal(
      fixed(note, 'Add method as ??'),
      `${head}${patient}procedures:\n  - site: left cheek # here\n    method: ??\n    specimen: not sent, benign\n`,
    );
  });

  it('put in a key before the first one, and below a block with comments', () => {
    const note = `visit: 2026-03-02\n${patient}procedures:\n- method: punch\n  specimen:\n    label: A\n    # of the lid\n`;
    const withSite = fixed(note, 'Add site as ??');
    assert.match(withSite, /^- site: \?\?\n {2}method: punch$/m);
    assert.match(fixed(note, 'Add medium as ??'), /^ {4}label: A\n {4}medium: \?\?\n {4}# of the lid$/m);
    assert.match(fixed(note, 'Add dressing as ??'), /^ {4}label: A\n {2}dressing: \?\?\n {4}# of the lid$/m);
  });

  it('put in a key between brackets, with the comma that parts it', () => {
    const note = `${head}patient: {id: C-1, allergies: none}\nprocedures: [{site: nose, method: punch}]\n`;
    assert.match(fixed(note, 'Add born as ??'), /\{id: C-1, born: \?\?, allergies: none\}/);
    assert.match(fixed(note, 'Add closure as ??'), /\{site: nose, method: punch, closure: \?\?\}/);
    const empty = fixed(`${head}patient: {}\nprocedures: [{site: nose}]\n`, 'Add id as ??');
    assert.match(empty, /patient: \{id: \?\?\}/);
  });

  it('put in all that a part lacks at once, in the order of the schema', () => {
    const note = `${head}${patient}procedures:\n  - site: left cheek\n    method: punch\n`;
    const text = fixed(note, 'missing keys of this part as ??', 'closure/missing');
    const keys = [...text.matchAll(/^ {4}([\w-]+): \?\?$/gm)].map((match) => match[1]);
    assert.deepEqual(keys, [
      'lesion',
      'question',
      'depth',
      'hemostasis',
      'closure',
      'specimen',
      'dressing',
      'complications',
    ]);
  });

  it('keep the line breaks of the file', () => {
    const note = `${head}${patient}procedures:\n  - site: left cheek\n    method: punch`.replaceAll(
      '\n',
      '\r\n',
    );
    assert.ok(fixed(note, 'Add closure as ??').endsWith('    method: punch\r\n    closure: ??'));
    assert.doesNotMatch(fixed(note, 'Accept this finding', 'closure/missing'), /(?<!\r)\n/);
  });

  it('leave a file that begins with a byte order mark in line', () => {
    const note = `\uFEFFvisit: 2026-03-02\n${patient}procedures:\n  - site: left cheek\n`;
    assert.match(fixed(note, 'Add consent as ??'), /allergies: none\}\nconsent: \?\?\n/);
  });

  it('accept a finding in the innermost part, in the style of that part', () => {
    const note = `${head}${patient}procedures:\n  - site: left cheek\n    method: punch\n`;
    assert.ok(
      fixed(note, 'Accept this finding', 'closure/missing').endsWith(
        '    method: punch\n    accepted:\n      - check: closure/missing\n        reason: ??\n        by: ??\n',
      ),
    );
    const compact = `${head}${patient}procedures:\n- site: left cheek\n  method: punch\n`;
    assert.ok(
      fixed(compact, 'Accept this finding', 'closure/missing').endsWith(
        '  method: punch\n  accepted:\n  - check: closure/missing\n    reason: ??\n    by: ??\n',
      ),
    );
    const flow = `${head}${patient}procedures: [{site: left cheek, method: punch}]\n`;
    assert.match(
      fixed(flow, 'Accept this finding', 'closure/missing'),
      /method: punch, accepted: \[\{check: closure\/missing, reason: \?\?, by: \?\?\}\]\}\]/,
    );
    assert.match(fixed(note, 'Accept this finding', 'record/missing-consent'), /^accepted:$/m);
  });

  it('accept one more finding behind those that are accepted', () => {
    const before = (accepted: string): string =>
      `${head}${patient}procedures:\n  - site: left cheek\n    method: punch\n    accepted: ${accepted}\n`;
    const one = 'check: closure/missing, reason: ??, by: ??';
    const after = (accepted: string): string =>
      fixed(before(accepted), 'Accept this finding', 'closure/missing');
    assert.match(
      after('[{check: a/b, reason: x}]'),
      new RegExp(`x\\}, \\{${one.replaceAll('?', '\\?')}\\}\\]`),
    );
    assert.match(
      after('{check: a/b, reason: x}'),
      /accepted: \[\{check: a\/b, reason: x\}, \{check: closure/,
    );
    assert.match(after('[]'), /accepted: \[\{check: closure/);
    assert.match(after(''), /accepted: \[\{check: closure/);
    assert.match(
      after('\n      - {check: a/b, reason: x} # why\n'),
      /reason: x\} # why\n {6}- \{check: closure\/missing, reason: \?\?, by: \?\?\}\n/,
    );
    assert.match(
      after('\n      - check: a/b\n        reason: x\n'),
      / {8}reason: x\n {6}- check: closure\/missing\n {8}reason: \?\?\n {8}by: \?\?\n/,
    );
    assert.match(
      after('\n      check: a/b\n      reason: |\n        x\n        y\n'),
      / {6}- check: a\/b\n {8}reason: \|\n {10}x\n {10}y\n {6}- check: closure\/missing\n/,
    );
  });

  it('do not accept how a note is written, nor what is accepted already', () => {
    const note = `${head}${patient}procedures:\n  - site: left cheek\n    metod: punch\n    accepted: [{check: closure/missing, reason: left open}]\n`;
    const accepting = offered(note).filter(({ does }) => does === 'accept');
    assert.ok(accepting.length > 0);
    for (const { code } of accepting) assert.doesNotMatch(code, /^(yaml|shape|closure)\//);
  });

  const cautery = `${head}patient: {id: C-1, born: 1961-08-09, allergies: none}\nprocedures:\n  - site: left cheek\n    method: shave\n    hemostasis: cautery\n`;

  it('name a change of the record so, and never prefer it', () => {
    const record = offered(cautery).filter(({ kind, does }) => kind === 'record' && does === 'mend');
    assert.deepEqual(
      record.map(({ title, sure }) => [title, sure]),
      [
        ['correct the record: heat cautery', false],
        ['correct the record: electrosurgery', false],
      ],
    );
    const accepting = offered(cautery).some(
      ({ code, does }) => code === record[0]?.code && does === 'accept',
    );
    assert.ok(accepting, 'beside correcting stands accepting');
    assert.doesNotMatch(applyEdits(cautery, fixAll(analysed(cautery))), /heat cautery|electrosurgery/);
  });

  it('leave what is signed as it is, and mend what is written later', () => {
    const signed = `${cautery.replace('method: shave', 'metod: shave')}signed: {by: K.O., at: 2026-03-02 12:00}\n`;
    const events = 'events:\n  - {on: 2026-03-03, kind: bleding, action: pressed, outcome: dry}\n';
    const later = signed + events;
    assert.deepEqual(
      offered(signed).filter(({ does }) => does !== 'accept'),
      [],
    );
    assert.deepEqual(fixAll(analysed(signed)), []);
    assert.equal(applyEdits(later, fixAll(analysed(later))), later.replace('bleding', 'bleeding'));
    assert.match(fixed(later.replace(', outcome: dry', ''), 'Accept', 'hemostasis/ambiguous'), /accepted:/);
  });

  it('leave a part with a syntax error alone, but for the error', () => {
    const good = '  - site: L cheek\n    method: punch\n';
    const bad = '  - site: R cheek\n    method: punch\n    specimen: {label: A\n';
    const note = `${head}${patient}procedures:\n${good}${bad}consent: written\n`;
    const from = note.indexOf(bad);
    const fixes = fixesAt(analysed(note), from, from + bad.length);
    assert.ok(fixes.length > 0);
    for (const { code } of fixes) assert.match(code, /^yaml\//);
    assert.ok(
      fixesAt(analysed(note), note.indexOf(good), from - 1).some(
        ({ code }) => code === 'site/side-abbreviated',
      ),
    );
  });

  it('mend all slips of a note together', () => {
    const note = `${head}${patient}procedures:\n  - site: L cheek\n    metod: punch\n    anesthetic: {agent: lidocaine, concentration: 1%, volume: .5 mL}\n`;
    const text = applyEdits(note, fixAll(analysed(note)));
    assert.match(text, /site: left cheek\n {4}method: punch\n.*volume: 0\.5 mL/);
    assert.deepEqual(fixAll(analysed(text)), []);
  });

  it('come for a place only, the sure ones first and accepting last', () => {
    const note = `${head}${patient}procedures:\n  - site: L cheek\n    method: punch\n`;
    const at = note.indexOf('L cheek');
    const here = fixesAt(analysed(note), at, at);
    assert.ok(here[0]?.sure === true && here[0].code === 'site/side-abbreviated');
    assert.equal(here.at(-1)?.does, 'accept');
    assert.ok(here.every(({ code }) => code.startsWith('site/')));
  });

  it('know what is missing from every check that says so', () => {
    const silent = catalogue.filter(
      ({ code, misses }) => /\/missing|-missing$/.test(code) && misses === undefined,
    );
    // A unit, a side and a colon are no keys, but parts of what is written.
    assert.deepEqual(
      silent.map(({ code }) => code),
      ['quantity/unit-missing', 'site/side-missing', 'yaml/missing-colon'],
    );
  });

  it('are edits of the text that was read, whatever it is', () => {
    const pieces = fc.constantFrom(
      ...[
        'visit: 2026-03-02',
        'patient:',
        '  id: C-1',
        'procedures:',
        '  - site: L cheek',
        '    method: punch',
      ],
      ...[
        '    accepted:',
        '      - check: a/b',
        '    specimen: {label: A',
        '',
        '# note',
        '\t- x',
        '- {a: [',
        '    ?',
      ],
    );
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 14 }), fc.constantFrom('\n', '\r\n'), (rows, eol) => {
        const text = rows.join(eol);
        const analysis = analysed(text);
        for (const { edits } of fixesAt(analysis, 0, text.length)) applyEdits(text, edits);
        applyEdits(text, fixAll(analysis));
      }),
      { numRuns: times(300) },
    );
  });
});
