import assert from 'node:assert/strict';
import { applyEdits } from '../../src/note/tree/edit.ts';
import { practiceIndex } from '../../src/note/read.ts';
import { referenceTables } from '../../src/practice/tables.ts';
import {
  analysePractice,
  completionsAt,
  diagnosticsOf,
  fixesAt,
  foldsOf,
  hoverAt,
} from '../../src/service/index.ts';

const context = { tables: referenceTables, today: '2026-03-02' };
const writing = { ...context, shapes: practiceIndex, root: 'practice' };

function offered(marked: string): { readonly text: string; readonly all: ReturnType<typeof completionsAt> } {
  const offset = marked.indexOf('|');
  const text = marked.slice(0, offset) + marked.slice(offset + 1);
  return { text, all: completionsAt(text, offset, writing) };
}

const labels = (marked: string): readonly string[] => offered(marked).all.map(({ label }) => label);

function accepted(marked: string, label: string): string {
  const { text, all } = offered(marked);
  const item = all.find((one) => one.label === label);
  assert.ok(item !== undefined, `${label} is not offered: ${all.map((one) => one.label).join(', ')}`);
  return applyEdits(text, [{ start: item.start, end: item.end, text: item.insert }]);
}

const hovered = (text: string, word: string): string =>
  hoverAt(analysePractice(text, context), text.indexOf(word) + 1)?.markdown ?? '';

describe('completions in a practice file', () => {
  it('offer its keys, and those of its parts', () => {
    assert.deepEqual(labels('|').slice(0, 3), ['wheal', 'name', 'telephone']);
    assert.ok(labels('name: a\n|').includes('limits'));
    assert.ok(!labels('name: a\n|').includes('name'));
    assert.ok(labels('limits:\n  - |').includes('max-mg-per-kg'));
    assert.ok(labels('overdue:\n  |').includes('fungal-culture'));
  });

  for (const [marked, some] of [
    ['authority: |', ['US prescribing information']],
    ['closed:\n  - |', ['Saturday', 'none']],
    ['closed: [|]', ['Sunday']],
    ['stock:\n  - agent: |', ['lidocaine']],
    ['stock:\n  - {product: a, epinephrine: |}', ['none']],
    ['stock:\n  - preservatives: |', ['methylparaben']],
    ['limits:\n  - agent: lidocaine\n    epinephrine: |', ['yes', 'no']],
    ['suture-windows:\n  - site: |', ['face', 'upper back']],
    ['words:\n  sites:\n    - name: a\n      like: |', ['upper back']],
    ['words:\n  agents:\n    - class: |', ['amide', 'ester']],
    ['wound-care:\n  ointment: |', ['none', 'petrolatum']],
    ['wound-care:\n  first-change: |', ['next morning']],
    ['language: |', ['en', 'es']],
    ['spelling: |', ['american', 'british']],
  ] as const)
    it(`offer at ${JSON.stringify(marked)} what belongs there`, () => {
      const all = labels(marked);
      for (const one of some) assert.ok(all.includes(one), `${one} is not among ${all.join(', ')}`);
    });

  it('offer the strengths that the agent of a product is made in, and none for one that is not known', () => {
    for (const [agent, some] of [
      ['lidocaine', ['0.5%', '1%', '1.5%', '2%']],
      ['bupivacaine', ['0.25%', '0.5%', '0.75%']],
    ] as const) {
      for (const marked of [
        `stock:\n  - product: a\n    agent: ${agent}\n    concentration: |`,
        `stock:\n  - {product: b, agent: mepivacaine}\n  - {product: a, concentration: |, agent: ${agent}}`,
      ]) {
        const all = labels(marked);
        for (const one of some) assert.ok(all.includes(one), `${one} is not among ${all.join(', ')}`);
      }
    }
    assert.ok(!labels('stock:\n  - {product: a, agent: bupivacaine, concentration: |}').includes('1%'));
    assert.deepEqual(labels('stock:\n  - {product: a, agent: nothing, concentration: |}'), []);
    assert.deepEqual(labels('stock:\n  - {product: a, concentration: |}'), []);
    assert.deepEqual(labels('stock:\n  - {product: a, agent: lidocaine, concentration: 1|}'), [
      '1%',
      '1 mg/mL',
    ]);
  });

  it('offer only authorities that may set the ceiling: each is taken without a fault', () => {
    for (const label of labels('authority: |')) {
      const { findings } = analysePractice(`authority: ${label}\n`, context).judgement;
      assert.deepEqual(findings, [], label);
    }
  });

  it('offer the codes of checks, then a severity, in block and in flow', () => {
    assert.equal(
      accepted('severities:\n  record/|', 'record/missing-depth:'),
      'severities:\n  record/missing-depth: ',
    );
    assert.equal(
      accepted('severities:\n  record/missing-depth: |', 'record/missing-depth: off'),
      'severities:\n  record/missing-depth: off',
    );
    assert.equal(accepted('severities: {|}', 'site/hard-to-find:'), 'severities: {site/hard-to-find: }');
  });

  it('offer the sentences of a handout by name, with their words beside them', () => {
    const { all } = offered('handout:\n  sentences:\n    es:\n      |');
    assert.equal(all.find(({ label }) => label === 'care-title:')?.detail, 'Cómo cuidar la herida');
    assert.match(
      accepted('handout:\n  sentences:\n    en:\n      care|', 'care-title:'),
      /\n {6}care-title: $/,
    );
  });

  it('offer no number, name or telephone that nobody said', () => {
    for (const key of ['name', 'telephone', 'holidays']) assert.deepEqual(labels(`${key}: |`), []);
    for (const key of ['max-mg', 'max-mg-per-kg', 'source'])
      assert.deepEqual(labels(`limits:\n  - agent: lidocaine\n    ${key}: |`), []);
  });
});

describe('hovers in a practice file', () => {
  const text =
    'authority: UK\nlimits: [{agent: lidocaine, max-mg: 100}]\nseverities: {record/missing-depth: off, no/such: off}\nhandout: {sentences: {en: {care-title: Afterwards, no-such: a}}}\nsuture-windows: [{site: scalp, from: 10, to: 14}]\n';

  it('help with each key', () => {
    assert.match(hovered(text, 'authority'), /Whose text sets the dose ceiling/);
    assert.match(hovered(text, 'max-mg'), /Most mg in one visit/);
  });

  it('say what a check is about whose severity is set, and what a sentence is without the practice', () => {
    assert.match(hovered(text, 'record/missing-depth'), /The depth is not recorded/);
    assert.match(hovered(text, 'care-title'), /Caring for the wound/);
    assert.doesNotMatch(hovered(text, 'no/such'), /undefined/);
    assert.doesNotMatch(hovered(text, 'no-such'), /undefined/);
  });

  it('say what is known of a site', () => {
    assert.match(hovered(text, 'scalp'), /scalp/);
  });
});

describe('diagnostics of a practice file', () => {
  it('show its faults where they stand', () => {
    const text =
      'nam: Example\nauthority: the boss\nlimits: [{agent: lidocaine, max-mg: 0}]\nclosed: [Christmas]\n';
    const found = diagnosticsOf(text, analysePractice(text, context).judgement.findings);
    assert.deepEqual(
      found.map(({ code, range }) => [code, range.start.line]),
      [
        ['shape/unknown-key', 0],
        ['practice/unknown-authority', 1],
        ['quantity/not-positive', 2],
        ['practice/unknown-day', 3],
      ],
    );
  });

  it('are mended by the fixes of the notes', () => {
    const text = 'langauge: en\n';
    const analysis = analysePractice(text, context);
    const [fix] = fixesAt(analysis, 0, 4);
    assert.ok(fix !== undefined, 'no fix is offered');
    assert.equal(applyEdits(text, fix.edits), 'language: en\n');
  });

  it('leave a half-typed file standing: nothing throws, whatever is cut off', () => {
    const text =
      'name: Example\nstock:\n  - {product: a, agent: lidocaine, concentration: 1%}\nseverities:\n  record/missing-depth: off\n';
    for (let end = 0; end <= text.length; end++) {
      const part = text.slice(0, end);
      const analysis = analysePractice(part, context);
      hoverAt(analysis, end);
      completionsAt(part, end, writing);
      foldsOf(part, analysis.root);
    }
  });
});
