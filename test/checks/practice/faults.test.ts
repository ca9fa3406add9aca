import assert from 'node:assert/strict';
import { checkOf, checkPractice, messageOf } from '../../../src/checks/index.ts';
import { checks } from '../../../src/checks/practice/faults.ts';
import { readPractice } from '../../../src/note/read.ts';
import { layOver, type Trust } from '../../../src/practice/tables.ts';
import { assertWords, silent, unmark } from '../tester.ts';

/** Asserts that a practice file has exactly the faults of a code that are marked, each with whole words. */
function faults(code: string, marked: string, form = 'main', trust?: Trust): void {
  const { text, ranges } = unmark(marked);
  const found = checkPractice(readPractice(text), trust).filter((finding) => finding.code === code);
  assert.deepEqual(
    found.map(({ start, end }) => text.slice(start, end)),
    ranges.map(({ start, end }) => text.slice(start, end)),
  );
  assert.deepEqual(
    found.map(({ start, end }) => ({ start, end })),
    ranges,
  );
  for (const finding of found) {
    assert.equal(finding.form, form);
    assert.equal(finding.severity, checkOf(code)?.severity);
    assertWords(finding);
  }
}

const approved = 'approved: {by: K.O., on: 2026-01-05, reason: invented for this test}';

describe('faults of the practice file', () => {
  for (const [code, marked, form] of [
    ['unknown-severity', 'severities: {record/missing-depth: ⟦loud⟧}\n'],
    ['unknown-check', 'severities: {⟦record/everything-at-once⟧: off}\n'],
    ['unknown-check', 'severities: {⟦record/mising-depth⟧: off}\n', 'nearest'],
    ['lowered-danger', 'severities: {⟦dose/over-limit⟧: off, ⟦record/check-failed⟧: hint}\n'],
    ['looser-limit', 'limits: [{agent: lidocaine, epinephrine: no, max-mg-per-kg: ⟦6⟧}]\n', 'mgPerKg'],
    ['looser-limit', 'limits: [{agent: lidocaine, epinephrine: no, max-mg: ⟦301⟧}]\n', 'capMg'],
    ['limit-without-number', 'limits: [{⟦agent⟧: lidocaine}]\n'],
    ['shadowed-word', 'words: {dressings: [⟦petrolatum⟧]}\n'],
    ['word-unjudged', 'words: {hemostasis: [⟦clay⟧]}\n', 'hemostasis'],
    ['unknown-agent', 'limits: [{agent: ⟦nothing known⟧, max-mg: 5}]\n'],
    ['unknown-agent', 'stock: [{product: a, agent: ⟦lidocain⟧}]\n', 'nearest'],
    ['incomplete-agent', 'words: {agents: [{name: ⟦examplecaine⟧, class: amide}]}\n'],
    ['unknown-authority', 'authority: ⟦the boss⟧\n'],
    ['repeated-product', 'stock: [{product: a, agent: lidocaine}, {product: ⟦A⟧, agent: lidocaine}]\n'],
    ['unknown-site', 'suture-windows: [{site: ⟦moon⟧, from: 5, to: 7}]\n'],
    ['unknown-site', 'words: {sites: [{name: my place, like: ⟦foreheed⟧}]}\n', 'nearest'],
    ['window-backwards', 'suture-windows: [{site: scalp, from: ⟦14⟧, to: 10}]\n'],
    ['unknown-day', 'closed: [⟦Christmas⟧]\n'],
    ['unknown-sentence', 'handout: {sentences: {en: {⟦everything⟧: a}}}\n'],
    ['unknown-sentence', 'handout: {sentences: {es: {⟦care-titel⟧: a}}}\n', 'nearest'],
    ['unknown-sentence', 'handout: {sentences: {en: {care-title: "for ⟦{name}⟧"}}}\n', 'gap'],
    ['unknown-sentence', 'handout: {sentences: {en: {care-dry-days: "{days} or ⟦{weeks}⟧"}}}\n', 'gaps'],
    ['unknown-choice', 'language: ⟦fr⟧\n'],
    ['limit-without-number', 'limits: [{⟦max-mg⟧: 100}]\n', 'agent'],
    ['out-of-proportion', 'overdue: {result: ⟦99999999999⟧, fungal-culture: ⟦0⟧, telling: ⟦400⟧}\n'],
    ['out-of-proportion', 'overdue: {attempts: ⟦0⟧}\n'],
    ['out-of-proportion', 'overdue: {attempts: ⟦99999⟧}\n'],
    ['out-of-proportion', 'wound-care: {press-minutes: ⟦4000⟧, press-times: ⟦0⟧}\n'],
    ['out-of-proportion', 'suture-windows: [{site: scalp, from: ⟦0⟧, to: 7}]\n'],
    ['out-of-proportion', 'suture-windows: [{site: scalp, from: 7, to: ⟦1000⟧}]\n'],
    ['out-of-proportion', 'suture-windows: [{site: scalp, from: 1, to: ⟦2⟧}]\n', 'early'],
    ['looser-follow-up', 'overdue: {telling: ⟦12⟧}\n', 'term'],
    ['looser-follow-up', 'overdue: {attempts: ⟦7⟧}\n', 'term'],
    ['product-differs', 'stock: [{product: ⟦lido 1%⟧, agent: lidocaine, concentration: 0.1%}]\n', 'strength'],
    [
      'product-differs',
      'stock: [{product: ⟦lido 10 mg/mL⟧, agent: lidocaine, concentration: 2%}]\n',
      'strength',
    ],
    ['product-differs', 'stock: [{product: ⟦bupi⟧, agent: lidocaine, concentration: 1%}]\n', 'agent'],
    [
      'product-differs',
      'stock: [{product: ⟦lido 1% epi⟧, agent: lidocaine, concentration: 1%}]\n',
      'epinephrine',
    ],
    [
      'product-differs',
      'stock: [{product: ⟦lido plain⟧, agent: lidocaine, concentration: 1%, epinephrine: "1:100,000"}]\n',
      'epinephrine',
    ],
    [
      'product-differs',
      'stock: [{product: ⟦"lido 1% 1:200,000"⟧, agent: lidocaine, concentration: 1%, epinephrine: "1:100,000"}]\n',
      'epinephrine',
    ],
  ] as const)
    it(`practice/${code} stands at ${/⟦.*?⟧/.exec(marked)?.[0] ?? ''}`, () => {
      faults(`practice/${code}`, marked, form);
    });

  it('practice/loosening-ignored stands at what restricted mode leaves out', () => {
    const untrusted = { trusted: false };
    const loose = `limits: [{agent: lidocaine, epinephrine: no, max-mg-per-kg: ⟦6⟧, ${approved}}]\n`;
    faults('practice/loosening-ignored', loose, 'main', untrusted);
    faults('practice/loosening-ignored', 'authority: ⟦UK⟧\n', 'authority', untrusted);
    faults('practice/loosening-ignored', unmark(loose).text);
  });

  it('leaves severities out in restricted mode, and says so once', () => {
    const rows = 'severities: {⟦record/missing-depth⟧: off, follow-up/not-told: error}\n';
    faults('practice/loosening-ignored', rows, 'severities', { trusted: false });
    const { tables } = layOver(readPractice(unmark(rows).text).value, { trusted: false });
    assert.equal(tables.severities.size, 0);
  });

  it('practice/lowered-danger keeps its severity', () => {
    const text = 'severities: {dose/over-limit: off, practice/lowered-danger: off}\n';
    const own = checkPractice(readPractice(text)).filter(({ code }) => code === 'practice/lowered-danger');
    assert.deepEqual(
      own.map(({ severity }) => severity),
      ['warning', 'warning'],
    );
  });

  it('leaves a product out whose name says another thing, so that a note with it is not judged', () => {
    const { tables } = layOver(
      readPractice('stock: [{product: lido 1%, agent: lidocaine, concentration: 0.1%}]\n').value,
    );
    assert.equal(tables.stock.size, 0);
  });

  for (const row of [
    'product: lido 1% epi, agent: lidocaine, concentration: 10 mg/mL, epinephrine: "1:100,000"',
    'product: "lido 1% 1:100,000", agent: lidocaine, concentration: 1%, epinephrine: 10 mcg/mL',
    'product: lido 1% plain, agent: lidocaine, concentration: 1%',
    'product: lido 1% no epi, agent: lidocaine, concentration: 1%, epinephrine: none',
    'product: half and half 1% 0.5%, agent: lidocaine, concentration: 1%',
    'product: blue vial, agent: lidocaine, concentration: 1%, epinephrine: "1:100,000"',
    'product: lido 1% epi, agent: lidocaine, concentration: 1%, epinephrine: ??',
  ])
    it(`no name says another thing: ${row}`, () => {
      faults('practice/product-differs', `stock: [{${row}}]\n`);
    });

  for (const [rows, used] of [
    ['limits: [{agent: lidocaine, epinephrine: no, max-mg-per-kg: ⟦0⟧}]\n', 'limit'],
    ['limits: [{agent: lidocaine, max-mg: ⟦0.0⟧, max-mg-per-kg: 3}]\n', 'limit'],
    ['words: {agents: [{name: examplecaine, class: amide, max-mg: ⟦0⟧}]}\n', 'limit'],
    ['limits: [{agent: lidocaine, max-mg: ⟦-5⟧}]\n', 'negative'],
  ] as const)
    it(`a limit of nothing is none: ${rows.trim()}`, () => {
      faults('quantity/not-positive', rows, used);
      const { tables } = layOver(readPractice(unmark(rows).text).value);
      for (const { mgPerKg, capMg } of tables.limits)
        assert.ok((mgPerKg ?? 1) > 0 && (capMg ?? 1) > 0, 'a limit of zero is in force');
    });

  it('are none in a file that says everything as it should', () => {
    const text = `name: Example Skin
closed: [Saturday, Sunday, 2026-12-25]
authority: US prescribing information
stock: [{product: lido 1%, agent: lidocaine, concentration: 1%}]
limits:
  - {agent: lidocaine, epinephrine: no, max-mg-per-kg: 6, source: a meeting, ${approved}}
  - {agent: bupivacaine, max-mg: 100}
suture-windows: [{site: scalp, from: 10, to: 14}]
severities: {record/missing-depth: off, dose/over-limit: error, record/missing-consent: error}
words: {sites: [{name: my place, like: thigh}], tests: [special stain X]}
handout: {sentences: {en: {care-dry-days: "Dry for {days} days, please."}}}
`;
    assert.deepEqual(checkPractice(readPractice(text)).map(messageOf), []);
  });

  it('are of the practice file: a note has none of them', () => {
    for (const { code } of checks) silent(code, 'visit: 2026-03-02\n');
  });

  it('come in the order of the text, with those of its form', () => {
    const found = checkPractice(
      readPractice(
        'nam: Example Skin\nclosed: [Christmas]\nlimits: [{agent: lidocaine, max-mg: 5, approved: {on: 2026-02-30}}]\n',
      ),
    );
    assert.deepEqual(
      found.map(({ start }) => start),
      found.map(({ start }) => start).sort((a, b) => a - b),
    );
    assert.deepEqual(
      new Set(found.map(({ code }) => code.split('/')[0])),
      new Set(['shape', 'practice', 'quantity']),
    );
  });

  it('have words for whatever reading and laying notice', () => {
    assert.ok(checkPractice(readPractice('- a\n')).length > 0);
    assert.ok(checkPractice(readPractice('')).length > 0);
  });

  it('can be lowered by the practice itself', () => {
    const found = checkPractice(
      readPractice('spelling: english\nseverities: {practice/unknown-choice: hint}\n'),
    );
    assert.deepEqual(
      found.map(({ code, severity }) => [code, severity]),
      [['practice/unknown-choice', 'hint']],
    );
  });

  it('says of an empty file, a list or a text what a practice file begins with', () => {
    for (const [code, text] of [
      ['yaml/empty', '# nothing yet\n'],
      ['shape/not-a-note', '- lidocaine\n'],
      ['shape/not-a-note', 'closed on Mondays\n'],
    ] as const) {
      const found = checkPractice(readPractice(text));
      assert.deepEqual(
        found.map((finding) => finding.code),
        [code],
      );
      assert.match(messageOf(found[0]!), /practice file.* `telephone`/);
      assert.doesNotMatch(messageOf(found[0]!), /visit|procedures/);
    }
  });
});
