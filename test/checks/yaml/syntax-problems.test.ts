import assert from 'node:assert/strict';
import { catalogue } from '../../../src/checks/index.ts';
import { fixed, flags, judge, silent } from '../tester.ts';

const before =
  'visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n  - site: left upper back\n    method: punch\n';
const codes = (text: string): string[] => judge(text).findings.map(({ code }) => code);

describe('what YAML can do and notes do not', () => {
  const only = (marked: string, code: string): void => {
    flags(code, marked);
    assert.deepEqual(
      codes(marked.replace(/[⟦⟧]/g, '')).filter((one) => one.startsWith('yaml/')),
      [code],
    );
  };

  it('directives', () => {
    only(`⟦%YAML 1.1⟧\n---\n${before}`, 'yaml/directive');
  });
  it('the words yes and no stay words under YAML 1.1', () => {
    const text = `%YAML 1.1\n---\n${before}    photo: yes\n    lesion: 012\n`;
    assert.ok(!codes(text).includes('quantity/unreadable'));
  });
  it('merge keys', () => {
    only(`${before}    closure: {⟦<<⟧: {how: none}}\n`, 'yaml/merge-key');
  });
  it('several documents', () => {
    only(`${before}⟦---⟧\nvisit: 2026-03-03\n`, 'yaml/several-documents');
  });
  it('keys that are lists', () => {
    only(`${before}⟦[a]⟧: b\n`, 'yaml/syntax');
  });
  it('tabs as indentation, with a fix', () => {
    const text = 'visit: 2026-03-02\npatient:\n⟦\t⟧id: C-1\n';
    only(text, 'yaml/tab');
    assert.equal(
      fixed('yaml/tab', text.replace(/[⟦⟧]/g, ''), 'spaces'),
      'visit: 2026-03-02\npatient:\n  id: C-1\n',
    );
  });
  it('a row that stands too far in', () => {
    only(`${before}      ⟦depth⟧: mid dermis\n`, 'yaml/indentation');
    assert.equal(
      fixed('yaml/indentation', `${before}      depth: mid dermis\n`, 'Line'),
      `${before}    depth: mid dermis\n`,
    );
  });
  it('a block that stands too far in, which is moved whole', () => {
    const text = `${before}      depth: mid dermis\n\n      specimen:\n        medium: formalin\n    size: 4 mm\n`;
    assert.equal(
      fixed('yaml/indentation', text, 'Line'),
      `${before}    depth: mid dermis\n\n    specimen:\n      medium: formalin\n    size: 4 mm\n`,
    );
  });
  it('a row that stands too far out', () => {
    only(`${before}   ⟦depth⟧: mid dermis\n`, 'yaml/indentation');
  });
  it('a missing comma, with a fix', () => {
    const text = `${before}    anesthetic: {agent: lidocaine, concentration: 1%, volume: 1 mL time: 10:13}\n`;
    assert.equal(fixed('yaml/syntax', text, 'comma'), text.replace('1 mL time', '1 mL, time'));
  });
  it('a backslash between double quotes', () => {
    only(`${before}    lesion: "a⟦\\⟧q"\n`, 'yaml/syntax');
  });

  for (const [title, marked] of [
    ['in the note', `visit: 2026-03-02\n⟦visit⟧: 2026-03-03\n`],
    ['in both spellings', `${before}    hemostasis: pressure\n    ⟦haemostasis⟧: pressure\n`],
    ['between brackets', `${before}    closure: {how: none, ⟦how⟧: suture}\n`],
    ['of keys that are not known', `${before}foo: 1\n⟦foo⟧: 2\n`],
    ['in a map of free keys', `${before}signed: {digests: {a: 1, ⟦a⟧: 2}}\n`],
    ['called __proto__', `${before}__proto__: 1\n⟦__proto__⟧: 2\n`],
  ] as const)
    it(`duplicate keys ${title}`, () => {
      const [finding] = flags('yaml/duplicate-key', marked);
      const related = finding?.related[0];
      assert.ok(related !== undefined && related.end < finding!.start);
    });

  it('equal keys in different maps are none', () => {
    silent('yaml/duplicate-key', `${before}  - site: right upper back\n    method: punch\n`);
  });

  it("never shows the parser's own words", () => {
    const words = catalogue.flatMap(({ messages }) => Object.values(messages)).join('\n');
    assert.doesNotMatch(words, /implicit|scalar|sequence|mapping|collection|flow map/i);
  });
});
