import assert from 'node:assert/strict';
import fc from 'fast-check';
import type { OpenItem } from '../../../src/followup/caseload.ts';
import { applyEdits } from '../../../src/note/tree/edit.ts';
import type { TextEdit } from '../../../src/note/tree/finding.ts';
import { referenceTables } from '../../../src/practice/tables.ts';
import { times } from '../../share.ts';
import { analyse, type Analysis } from '../../../src/service/index.ts';
import {
  askingFor,
  doneBy,
  faultIn,
  isRefused,
  openItemsOf,
  sameItem,
  type Done,
  type Question,
} from '../../../src/service/follow-up/record-done.ts';

const today = '2026-03-20';
const analysed = (text: string): Analysis => analyse(text, { tables: referenceTables, today });

/** The only open item of a kind. */
function itemOf(analysis: Analysis, kind: OpenItem['kind']): OpenItem {
  const items = openItemsOf(analysis).filter((item) => item.kind === kind);
  assert.equal(items.length, 1, `${items.length} items of ${kind}`);
  return items[0]!;
}

function written(
  text: string,
  kind: OpenItem['kind'] | 'call',
  answers: Readonly<Record<string, string>>,
): Done {
  const analysis = analysed(text);
  const item = kind === 'call' ? undefined : itemOf(analysis, kind);
  const done = doneBy(analysis, item, new Map(Object.entries(answers)));
  assert.ok(!isRefused(done), isRefused(done) ? done.why : '');
  return done;
}

function refused(
  text: string,
  kind: OpenItem['kind'] | 'call',
  answers: Readonly<Record<string, string>>,
): string {
  const analysis = analysed(text);
  const item = kind === 'call' ? undefined : itemOf(analysis, kind);
  const done = doneBy(analysis, item, new Map(Object.entries(answers)));
  assert.ok(isRefused(done), 'it was written');
  return done.why;
}

const head = 'visit: 2026-03-02\npatient: {id: C-1}\nprocedures:\n';

interface Case {
  readonly title: string;
  readonly kind: OpenItem['kind'] | 'call';
  readonly answers: Readonly<Record<string, string>>;
  readonly before: string;
  readonly after: string;
}

const cases: readonly Case[] = [
  {
    title: 'a specimen that was sent, in a map on one row',
    kind: 'specimen to send',
    answers: { sent: '2026-03-03' },
    before: `${head}  - {site: chin, method: shave, specimen: {label: A, medium: formalin}}\n`,
    after: `${head}  - {site: chin, method: shave, specimen: {label: A, medium: formalin, sent: 2026-03-03}}\n`,
  },
  {
    title: 'a specimen that was sent, in the place of what was not known',
    kind: 'specimen to send',
    answers: { sent: '2026-03-03' },
    before: `${head}  - site: chin\n    specimen:\n      label: A\n      sent: ?? # ask\n      medium: formalin\n`,
    after: `${head}  - site: chin\n    specimen:\n      label: A\n      sent: 2026-03-03 # ask\n      medium: formalin\n`,
  },
  {
    title: 'a specimen of which the note says nothing',
    kind: 'specimen to send',
    answers: { sent: '2026-03-02', medium: 'formalin' },
    before: `${head}  - site: chin\n    method: shave\n    dressing: gauze\n`,
    after: `${head}  - site: chin\n    method: shave\n    specimen:\n      label: ??\n      medium: formalin\n      sent: 2026-03-02\n    dressing: gauze\n`,
  },
  {
    title: 'a result, as a list below the specimen',
    kind: 'result',
    answers: { received: '2026-03-09', diagnosis: 'nevus: benign' },
    before: `${head}  - site: chin\n    specimen:\n      label: A\n      sent: 2026-03-02\n    dressing: gauze\n`,
    after: `${head}  - site: chin\n    specimen:\n      label: A\n      sent: 2026-03-02\n      results:\n        - received: 2026-03-09\n          diagnosis: "nevus: benign"\n    dressing: gauze\n`,
  },
  {
    title: 'a result, with dashes in the column of their key where the note has them there',
    kind: 'result',
    answers: { received: '2026-03-09' },
    before: `${head}- site: chin\n  specimen:\n    label: A\n    sent: 2026-03-02\n`,
    after: `${head}- site: chin\n  specimen:\n    label: A\n    sent: 2026-03-02\n    results:\n    - received: 2026-03-09\n      diagnosis: ??\n`,
  },
  {
    title: 'a result between brackets',
    kind: 'result',
    answers: { received: '2026-03-09', diagnosis: 'nevus, benign' },
    before: `${head}  - {site: chin, specimen: {label: A, sent: 2026-03-02}}\n`,
    after: `${head}  - {site: chin, specimen: {label: A, sent: 2026-03-02, results: [{received: 2026-03-09, diagnosis: "nevus, benign"}]}}\n`,
  },
  {
    title: 'a result that was awaited, in its own gaps',
    kind: 'result',
    answers: { received: '2026-03-09', diagnosis: 'nevus' },
    before: `${head}  - site: chin\n    specimen:\n      sent: 2026-03-02\n      result: {received: ??}\n`,
    after: `${head}  - site: chin\n    specimen:\n      sent: 2026-03-02\n      result: {received: 2026-03-09, diagnosis: nevus}\n`,
  },
  {
    title: 'that the patient was told, on one row below the result',
    kind: 'telling the patient',
    answers: { on: '2026-03-10', how: 'telephone' },
    before: `${head}  - site: chin\n    specimen:\n      sent: 2026-03-02\n      results:\n        - received: 2026-03-09\n          diagnosis: nevus\n          next: none needed\n`,
    after: `${head}  - site: chin\n    specimen:\n      sent: 2026-03-02\n      results:\n        - received: 2026-03-09\n          diagnosis: nevus\n          told: {on: 2026-03-10, by: ??, how: telephone}\n          next: none needed\n`,
  },
  {
    title: 'that the patient was told after an attempt',
    kind: 'telling the patient',
    answers: { on: '2026-03-11', by: 'N.B.', how: 'telephone' },
    before: `${head}  - site: chin\n    specimen:\n      sent: 2026-03-02\n      results: [{received: 2026-03-09, diagnosis: nevus, told: {on: 2026-03-10, how: voicemail}}]\n`,
    after: `${head}  - site: chin\n    specimen:\n      sent: 2026-03-02\n      results: [{received: 2026-03-09, diagnosis: nevus, told: [{on: 2026-03-10, how: voicemail}, {on: 2026-03-11, by: N.B., how: telephone}]}]\n`,
  },
  {
    title: 'that the patient was told after a list of attempts, in rows that end with CRLF',
    kind: 'telling the patient',
    answers: { on: '2026-03-12', by: 'N.B.', how: 'visit' },
    before:
      `${head}  - site: chin\n    specimen:\n      sent: 2026-03-02\n      results:\n        - received: 2026-03-09\n          told:\n            - on: 2026-03-10\n              how: voicemail\n\n            # again tomorrow\n    dressing: gauze\n`.replaceAll(
        '\n',
        '\r\n',
      ),
    after:
      `${head}  - site: chin\n    specimen:\n      sent: 2026-03-02\n      results:\n        - received: 2026-03-09\n          told:\n            - on: 2026-03-10\n              how: voicemail\n            - {on: 2026-03-12, by: N.B., how: visit}\n\n            # again tomorrow\n    dressing: gauze\n`.replaceAll(
        '\n',
        '\r\n',
      ),
  },
  {
    title: 'that the patient was told, into a map with gaps, and who it was stays',
    kind: 'telling the patient',
    answers: { on: '2026-03-10', how: 'letter' },
    before: `${head}  - site: chin\n    specimen: {sent: 2026-03-02, result: {received: 2026-03-09, told: {on: ??, by: K.O.}}}\n`,
    after: `${head}  - site: chin\n    specimen: {sent: 2026-03-02, result: {received: 2026-03-09, told: {on: 2026-03-10, by: K.O., how: letter}}}\n`,
  },
  {
    title: 'a plan after a grave diagnosis',
    kind: 'next step',
    answers: { next: 'excision on 2026-03-24, 5 mm' },
    before: `${head}  - site: chin\n    specimen: {sent: 2026-03-02, result: {received: 2026-03-09, diagnosis: melanoma, told: 2026-03-10}}\n`,
    after: `${head}  - site: chin\n    specimen: {sent: 2026-03-02, result: {received: 2026-03-09, diagnosis: melanoma, told: 2026-03-10, next: "excision on 2026-03-24, 5 mm"}}\n`,
  },
  {
    title: 'a step that was done',
    kind: 'next step',
    answers: { done: '2026-03-18' },
    before: `${head}  - site: chin\n    specimen:\n      sent: 2026-03-02\n      results:\n        - received: 2026-03-09\n          told: 2026-03-10\n          next: topical treatment\n`,
    after: `${head}  - site: chin\n    specimen:\n      sent: 2026-03-02\n      results:\n        - received: 2026-03-09\n          told: 2026-03-10\n          next: topical treatment\n          done: 2026-03-18\n`,
  },
  {
    title: 'stitches that are out',
    kind: 'suture removal',
    answers: { on: '2026-03-12', count: '2' },
    before: `${head}  - site: left upper back\n    method: punch\n    closure: {material: nylon, size: 4-0, count: 2}\n    sutures-due: 2026-03-13\n    specimen: not sent, a benign tag`,
    after: `${head}  - site: left upper back\n    method: punch\n    closure: {material: nylon, size: 4-0, count: 2}\n    sutures-due: 2026-03-13\n    sutures-out: {on: 2026-03-12, by: ??, count: 2}\n    specimen: not sent, a benign tag`,
  },
  {
    title: 'stitches that are out, in the place of what was not known',
    kind: 'suture removal',
    answers: { on: '2026-03-12', by: 'N.B.' },
    before: `${head}  - site: left upper back\n    closure: {material: nylon, size: 4-0, count: 2}\n    sutures-out: ??\n`,
    after: `${head}  - site: left upper back\n    closure: {material: nylon, size: 4-0, count: 2}\n    sutures-out: {on: 2026-03-12, by: N.B., count: ??}\n`,
  },
  {
    title: 'how an event ended',
    kind: 'event outcome',
    answers: { outcome: 'stopped # none since' },
    before: `${head}  - site: chin\nevents:\n  - {on: 2026-03-03, kind: bleeding}\n`,
    after: `${head}  - site: chin\nevents:\n  - {on: 2026-03-03, kind: bleeding, outcome: "stopped # none since"}\n`,
  },
  {
    title: 'how an event ended that went on: as the next one, about the same wound',
    kind: 'event outcome',
    answers: { on: '2026-03-06', kind: 'call', outcome: 'healed' },
    before: `${head}  - site: chin\n  - site: nose\nevents:\n  - on: 2026-03-03\n    kind: infection\n    procedure: 2\n    outcome: ongoing\nsigned: {by: K.O., at: 2026-03-02 11:00}\n`,
    after: `${head}  - site: chin\n  - site: nose\nevents:\n  - on: 2026-03-03\n    kind: infection\n    procedure: 2\n    outcome: ongoing\n  - on: 2026-03-06\n    kind: call\n    procedure: 2\n    outcome: healed\n    by: ??\nsigned: {by: K.O., at: 2026-03-02 11:00}\n`,
  },
  {
    title: 'a return visit',
    kind: 'return visit',
    answers: { on: '2026-03-11', kind: 'wound check', signs: 'dry', by: 'N.B.' },
    before: `${head}  - site: chin\nevents: [{on: 2026-03-03, kind: bleeding, outcome: "stopped, recheck on 2026-03-10"}]\n`,
    after: `${head}  - site: chin\nevents: [{on: 2026-03-03, kind: bleeding, outcome: "stopped, recheck on 2026-03-10"}, {on: 2026-03-11, kind: wound check, signs: dry, outcome: ??, by: N.B.}]\n`,
  },
  {
    title: 'a call, as the first event, before the signature',
    kind: 'call',
    answers: { on: '2026-03-04', signs: 'no pain', by: 'N.B.' },
    before: `${head}  - site: chin\nsigned: {by: K.O., at: 2026-03-02 11:00}\n`,
    after: `${head}  - site: chin\nevents:\n  - on: 2026-03-04\n    kind: call\n    signs: no pain\n    action: ??\n    outcome: ??\n    by: N.B.\nsigned: {by: K.O., at: 2026-03-02 11:00}\n`,
  },
  {
    title: 'a call, between the brackets of the whole note',
    kind: 'call',
    answers: { on: '2026-03-04' },
    before: `{visit: 2026-03-02, patient: {id: C-1}, procedures: [{site: chin}]}\n`,
    after: `{visit: 2026-03-02, patient: {id: C-1}, procedures: [{site: chin}], events: [{on: 2026-03-04, kind: call, signs: ??, action: ??, outcome: ??, by: ??}]}\n`,
  },
  {
    title: 'that the patient was told after an attempt that stands in rows: they become the first of a list',
    kind: 'telling the patient',
    answers: { on: '2026-03-11', by: 'N.B.', how: 'telephone' },
    before: `${head}  - site: chin\n    specimen:\n      sent: 2026-03-02\n      results:\n        received: 2026-03-09\n        told:\n          on: 2026-03-10 # late\n          how: voicemail\n    dressing: gauze\n`,
    after: `${head}  - site: chin\n    specimen:\n      sent: 2026-03-02\n      results:\n        received: 2026-03-09\n        told:\n          - on: 2026-03-10 # late\n            how: voicemail\n          - {on: 2026-03-11, by: N.B., how: telephone}\n    dressing: gauze\n`,
  },
];

describe('what was done', () => {
  for (const { title, kind, answers, before, after } of cases)
    it(`is written: ${title}`, () => {
      const { edits } = written(before, kind, answers);
      assert.equal(applyEdits(before, edits), after);
    });

  it('ends the item, or takes it on', () => {
    for (const { kind, answers, before, title } of cases)
      if (kind !== 'call') assert.equal(written(before, kind, answers).staysOpen, false, title);
  });

  it('is shown where it stands: the first gap, or the row', () => {
    const shown = ({ before, kind, answers, after }: Case): string => {
      const { at } = written(before, kind, answers);
      return `${after.slice(at.start - 4, at.start)}⟦${after.slice(at.start, at.end)}⟧`;
    };
    assert.equal(shown(cases[2]!), 'el: ⟦??⟧');
    assert.match(shown(cases[12]!), /⟦⟧$/);
    const { at } = written(cases[12]!.before, 'next step', { done: '2026-03-18' });
    assert.ok(cases[12]!.after.slice(at.start).startsWith('done: 2026-03-18'));
  });

  it('is not written without the answer that makes it true', () => {
    const text = cases[3]!.before;
    assert.match(refused(text, 'result', { diagnosis: 'nevus' }), /Nothing is written without it/);
    assert.match(refused(text, 'result', { received: '??' }), /Nothing is written without it/);
    assert.match(refused(text, 'result', { received: 'yesterday' }), /Write the day as/);
    assert.match(refused(text, 'result', { received: '2026-03-01' }), /before 2026-03-02/);
    assert.match(refused(text, 'result', { received: '2026-03-21' }), /still to come/);
  });

  it('is not written over what the note says already', () => {
    const step = `${head}  - site: chin\n    specimen: {sent: 2026-03-02, result: {received: 2026-03-09, told: 2026-03-10, next: excision, done: pending}}\n`;
    assert.match(refused(step, 'next step', { done: '2026-03-10' }), /already says: done: pending/);
    const out = `${head}  - site: left upper back\n    closure: {material: nylon, count: 2}\n    sutures-out: still in\n`;
    assert.match(refused(out, 'suture removal', { on: '2026-03-12' }), /already says: sutures-out: still in/);
    const words = `${head}  - site: chin\n    specimen: {sent: 2026-03-02, result: {received: 2026-03-09, told: soon}}\n`;
    assert.match(refused(words, 'telling the patient', { on: '2026-03-11' }), /Make a list of it by hand/);
  });

  it('is not written where an ending is none', () => {
    const text = `${head}  - site: chin\nevents:\n  - {on: 2026-03-03, kind: bleeding}\n`;
    assert.match(refused(text, 'event outcome', { outcome: 'ongoing' }), /not ended yet/);
  });

  it('is not written into a note that can’t be read', () => {
    const analysis = analysed(`${head}  - site: chin\n    specimen: {label: A, ]\n`);
    const asking = askingFor(analysis, undefined);
    assert.ok(isRefused(asking) && asking.why.includes('cannot be read'));
  });

  it('says when an attempt leaves the item open, and when a day closes nothing', () => {
    const text = `${head}  - site: chin\n    specimen: {sent: 2026-03-02, result: {received: 2026-03-09, diagnosis: nevus}}\n`;
    const after = applyEdits(
      text,
      written(text, 'telling the patient', { on: '2026-03-10', how: 'voicemail' }).edits,
    );
    assert.equal(itemOf(analysed(after), 'telling the patient').what, 'tried once, last on 2026-03-10');
    const visit = cases[17]!;
    assert.equal(written(visit.before, 'return visit', { on: '2026-03-04', kind: 'call' }).staysOpen, true);
  });

  it('names what of a signed note it changes', () => {
    const signed = `${head}  - site: chin\n    method: shave\n    specimen:\n      label: A\nsigned: {by: K.O., at: 2026-03-02 11:00}\n`;
    assert.deepEqual(written(signed, 'specimen to send', { sent: '2026-03-03' }).signedParts, [
      'procedure 1',
    ]);
    assert.deepEqual(written(signed, 'result', { received: '2026-03-09' }).signedParts, []);
  });
});

describe('the questions', () => {
  it('offer days that are possible, and have nothing filled in', () => {
    const analysis = analysed(cases[3]!.before);
    const asking = askingFor(analysis, itemOf(analysis, 'result'));
    assert.ok(!isRefused(asking));
    const [day, diagnosis] = asking.questions;
    assert.deepEqual(day?.choices, [
      { text: '2026-03-20', detail: 'today, Friday' },
      { text: '2026-03-19', detail: 'yesterday, Thursday' },
      { text: '2026-03-02', detail: 'day of the visit, Monday' },
    ]);
    assert.deepEqual([day.required, diagnosis?.required], [true, false]);
    assert.deepEqual(diagnosis?.choices, []);
  });

  it('refuse what is no answer', () => {
    const analysis = analysed(cases[13]!.before);
    const asking = askingFor(analysis, itemOf(analysis, 'suture removal'));
    assert.ok(!isRefused(asking));
    const count = asking.questions.find(({ key }) => key === 'count')!;
    const known = { tables: referenceTables, today };
    assert.equal(faultIn(count, '2', known), undefined);
    assert.equal(faultIn(count, '', known), undefined);
    assert.match(faultIn(count, 'some', known) ?? '', /whole number/);
  });

  it('are about the item as the note has it by now', () => {
    const text = cases[3]!.before;
    const item = itemOf(analysed(text), 'result');
    const moved = analysed(`# a row\n${text}`);
    assert.equal(sameItem(moved, item)?.start, item.start + 8);
    assert.equal(sameItem(analysed(cases[3]!.after), item), undefined);
  });
});

/** What edits leave alone stays as it is, byte for byte. */
function assertRestKept(before: string, edits: readonly TextEdit[]): void {
  const after = applyEdits(before, edits);
  let shift = 0;
  let from = 0;
  for (const { start, end, text } of [...edits].sort((a, b) => a.start - b.start)) {
    assert.equal(after.slice(from + shift, start + shift), before.slice(from, start));
    // Nothing is taken away but what means "not yet known".
    assert.match(before.slice(start, end), /^(?:\?\?)?$/);
    shift += text.length - (end - start);
    from = end;
  }
  assert.equal(after.slice(from + shift), before.slice(from));
}

const words = fc.oneof(
  fc.constantFrom(
    'nevus',
    'a: b',
    'x # y',
    '??',
    '- dash',
    'it’s "so"',
    "it's",
    '{a}',
    'a, b',
    '*',
    '',
    '  padded ',
    'a:',
    '%',
    'yes',
    '1.5',
    '|',
    '\t',
    'é',
    '\u0007bell',
    'back\\slash',
  ),
  fc.string({ unit: 'grapheme', maxLength: 30 }),
);

const specimens = [
  '{label: A}',
  '{label: A, sent: ??}',
  '{label: A, sent: 2026-03-02}',
  '{label: A, sent: 2026-03-02, tests: [routine histology, fungal culture]}',
  '{label: A, sent: 2026-03-02, result: {received: 2026-03-09}}',
  '{label: A, sent: 2026-03-02, result: {received: 2026-03-09, diagnosis: melanoma}}',
  '{label: A, sent: 2026-03-02, result: {received: 2026-03-09, diagnosis: melanoma, told: 2026-03-10}}',
  '{label: A, sent: 2026-03-02, result: {received: 2026-03-09, diagnosis: nevus, told: 2026-03-10, next: recheck}}',
  '{label: A, sent: 2026-03-02, result: {received: 2026-03-09, told: {on: 2026-03-10, how: voicemail}}}',
  '{label: A, sent: 2026-03-02, result: {received: 2026-03-09, told: ??, next: ??}}',
  '[{label: A}, {label: B, sent: 2026-03-02, results: [{received: 2026-03-09, told: [{on: 2026-03-10, how: voicemail}]}]}]',
];
const eventLists = [
  '[{on: 2026-03-03, kind: bleeding}]',
  '[{on: 2026-03-03, kind: infection, outcome: ongoing}]',
  '[{on: 2026-03-03, kind: call, outcome: "recheck on 2026-03-10"}]',
  '{on: 2026-03-03, kind: hematoma, outcome: ??}',
  '[]',
];

/** Writes plain data of flow style as blocks. */
function block(flow: string, indent: string, compact: boolean): string {
  const step = compact ? '' : '  ';
  const inner = (text: string): readonly string[] => {
    const parts: string[] = [];
    let [depth, from] = [0, 1];
    let quote = false;
    for (let at = 1; at < text.length; at++) {
      const letter = text[at]!;
      if (letter === '"') quote = !quote;
      if (quote) continue;
      if ('[{'.includes(letter)) depth += 1;
      if ((letter === ',' && depth === 0) || at === text.length - 1) {
        parts.push(text.slice(from, at).trim());
        from = at + 1;
      } else if (']}'.includes(letter)) depth -= 1;
    }
    return parts.filter((part) => part !== '');
  };
  if (flow.startsWith('[') && flow !== '[]')
    return inner(flow)
      .map((item) =>
        item.startsWith('{')
          ? `\n${indent}${step}- ${block(item, `${indent}${step}  `, compact).trimStart()}`
          : `\n${indent}${step}- ${item}`,
      )
      .join('');
  if (!flow.startsWith('{')) return ` ${flow}`;
  return inner(flow)
    .map((entry) => {
      const colon = entry.indexOf(':');
      const value = entry.slice(colon + 1).trim();
      const deeper = value.startsWith('{') ? `${indent}  ` : indent;
      return `\n${indent}${entry.slice(0, colon)}:${block(value, deeper, compact)}`;
    })
    .join('');
}

const notes = fc
  .record({
    specimen: fc.constantFrom(...specimens),
    events: fc.option(fc.constantFrom(...eventLists), { nil: undefined }),
    stitched: fc.boolean(),
    style: fc.constantFrom('flow', 'block', 'compact'),
    crlf: fc.boolean(),
    comment: fc.boolean(),
    ends: fc.constantFrom('', '\n', '\n\n# the end\n'),
    addendum: fc.boolean(),
  })
  .map(({ specimen, events, stitched, style, crlf, comment, ends, addendum }) => {
    const closure = stitched ? ', closure: {material: nylon, size: 4-0, count: 2}' : ', closure: none';
    const procedure = `{site: left upper back, method: punch, size: 4 mm${closure}, specimen: ${specimen}, dressing: gauze}`;
    const more = events === undefined ? '' : `, events: ${events}`;
    const last = addendum ? ', addenda: [{at: 2026-03-04, by: K.O., text: seen}]' : '';
    const flow = `{visit: 2026-03-02, patient: {id: C-1, age: 60 years, allergies: none}, procedures: [${procedure}]${more}${last}}`;
    const text = style === 'flow' ? flow : block(flow, '', style === 'compact').trimStart();
    const marked = comment ? text.replace('dressing: gauze', 'dressing: gauze # as always') : text;
    const whole = style === 'flow' ? text : marked;
    return (whole + ends).replaceAll('\n', crlf ? '\r\n' : '\n');
  });

const errorsOf = ({ judgement }: Analysis): ReadonlyMap<string, number> => {
  const counts = new Map<string, number>();
  for (const { code, severity } of judgement.findings)
    if (severity === 'error') counts.set(code, (counts.get(code) ?? 0) + 1);
  return counts;
};

const fixed: Readonly<Partial<Record<Question['kind'], string>>> = {
  day: today,
  ending: 'healed',
  count: '2',
};

/** An answer that ends what is asked about, and says what it likes elsewhere. */
function answerTo({ kind, key, required, choices }: Question, said: string): string {
  if (key === 'how') return 'telephone';
  if (kind === 'event') return choices[0]!.text;
  return fixed[kind] ?? (required && !/\w\w/.test(said) ? 'excision' : said);
}

describe('whatever is open in a note, and however it is written', () => {
  it('can be ended or taken on; the rest of the note stays, and no error comes', () => {
    const tried = new Map<string, number>();
    fc.assert(
      fc.property(notes, fc.array(words, { minLength: 6, maxLength: 6 }), fc.nat(), (text, said, pick) => {
        const before = analysed(text);
        assert.deepEqual(before.damage, [], text);
        const items = [...openItemsOf(before), undefined];
        const item = items[pick % items.length];
        const asking = askingFor(before, item);
        assert.ok(!isRefused(asking), `${text}\n${isRefused(asking) ? asking.why : ''}`);
        const answers = new Map<string, string>();
        for (const [index, question] of asking.questions.entries())
          answers.set(question.key, answerTo(question, said[index % said.length]!));
        const done = doneBy(before, item, answers);
        assert.ok(!isRefused(done), `${text}\n${isRefused(done) ? done.why : ''}`);
        const after = analysed(applyEdits(text, done.edits));
        const shown = `${text}\n---\n${after.text}`;
        assertRestKept(text, done.edits);
        assert.equal(done.staysOpen, false, shown);
        assert.deepEqual(after.damage, [], shown);
        const were = errorsOf(before);
        for (const [code, count] of errorsOf(after))
          assert.ok(count <= (were.get(code) ?? 0), `${code}: ${shown}`);
        // A gap is shown only where one was written.
        const gap = after.text.slice(done.at.start, done.at.end);
        assert.ok(gap === '' || gap === '??');
        tried.set(asking.title, (tried.get(asking.title) ?? 0) + 1);
      }),
      { numRuns: times(400) },
    );
    assert.ok(tried.size >= times(8), [...tried.keys()].join(', '));
  });
});
