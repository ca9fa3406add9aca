import assert from 'node:assert/strict';
import { flags, judge, silent } from '../tester.ts';

const before =
  'visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: left upper back\n    method: punch\n';
const codes = (text: string): string[] => judge(text).findings.map(({ code }) => code);

describe('files that are no notes', () => {
  const nested = (count: number): string => `visit: ${'['.repeat(count)}${']'.repeat(count)}`;
  const cases: readonly (readonly [string, string, string])[] = [
    ['an empty file', '', 'yaml/empty'],
    ['comments only', '# one\n\n# two\n', 'yaml/empty'],
    ['a document mark only', '---\n', 'yaml/empty'],
    ['blanks only', ' \n\n', 'yaml/empty'],
    ['a list', '- visit: 2026-03-02\n- patient: {id: C-1}\n', 'shape/not-a-note'],
    ['a broken list', '- a\nb: 1\n', 'shape/not-a-note'],
    ['a bare text', 'Dear colleague,\nthe patient was seen.\n', 'shape/not-a-note'],
    ['a picture', '\u0089PNG\r\n\u001a\n\0\0\0\rIHDR', 'yaml/not-text'],
    ['signs that no text has', '\u0001\u0002\u0003visit', 'yaml/not-text'],
    ['5,000 nested brackets', nested(5000), 'yaml/too-deep'],
    ['5,000 brackets that are never closed', '{'.repeat(5000), 'yaml/too-deep'],
    ['a chain of dashes', '- '.repeat(5000), 'yaml/too-deep'],
    ['a chain of question marks', '? '.repeat(5000), 'yaml/too-deep'],
    ['a chain of keys', 'a: '.repeat(5000), 'yaml/too-deep'],
    [
      'rows that stand further and further in',
      Array.from({ length: 500 }, (_, at) => `${' '.repeat(at)}a:`).join('\n'),
      'yaml/too-deep',
    ],
    ['600 KiB', `visit: ${'x'.repeat(600 * 1024)}`, 'yaml/too-large'],
    ['30,000 rows', 'a: 1\n'.repeat(30_000), 'yaml/too-large'],
    ['100,000 values in a row', `a: [${'b,'.repeat(100_000)}]`, 'yaml/too-large'],
    ['an alias bomb', bomb(), 'yaml/anchor-or-alias'],
    ['a list that contains itself', 'visit: &a [*a]', 'yaml/anchor-or-alias'],
    ['a map that contains itself', 'visit: &a {b: *a}', 'yaml/anchor-or-alias'],
    ['500 KB of quotes', '"'.repeat(500_000), 'yaml/too-large'],
    ['20,000 quotes', '"\n'.repeat(19_000), 'yaml/syntax'],
    ['500 KB of closing brackets', ']'.repeat(500_000), 'yaml/syntax'],
    ['500 KB of pairs of brackets', '[]'.repeat(250_000), 'yaml/syntax'],
    ['500 KB of aliases', '*a '.repeat(166_000), 'yaml/too-large'],
    ['500 KB on one line', 'x'.repeat(500_000), 'shape/not-a-note'],
  ];

  function bomb(): string {
    const rows = ['a0: &a0 x'];
    for (let at = 1; at < 30; at++) rows.push(`a${at}: &a${at} [${`*a${at - 1}, `.repeat(9)}*a${at - 1}]`);
    return rows.join('\n');
  }

  for (const [title, text, code] of cases)
    it(`${title}: one clear finding and nothing else`, () => {
      const { findings, dose } = judge(text);
      assert.deepEqual(
        findings.map((finding) => finding.code),
        [code],
      );
      assert.equal(dose, null);
    });

  it('a newer format gets one warning and nothing else, whatever else is in it', () => {
    const findings = flags(
      'shape/newer-format',
      'wheal: ⟦2⟧\nfoo: [1, 2]\nvisit: yesterday\nvisit: today\n',
      {
        severity: 'warning',
      },
    );
    assert.equal(findings.length, 1);
    assert.deepEqual(codes('wheal: 2\nfoo: [1, 2]\nvisit: yesterday\nvisit: today\n'), [
      'shape/newer-format',
    ]);
    silent('shape/newer-format', `wheal: 1\n${before}`);
  });

  it('20,000 rows are read, one more is not', () => {
    const rows = (count: number): string => before + '\n'.repeat(count - before.split('\n').length + 1);
    assert.ok(!codes(rows(20_000)).includes('yaml/too-large'));
    assert.deepEqual(codes(rows(20_001)), ['yaml/too-large']);
  });

  it('a note that is large and whole is read', () => {
    const rows = Array.from(
      { length: 300 },
      (_, at) => `  - site: left upper back\n    method: punch\n    lesion: "${at}"\n`,
    );
    assert.ok(
      !codes(`visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n${rows.join('')}`).some((code) =>
        code.startsWith('yaml/'),
      ),
    );
  });
});
