/** Whatever is in a note or a practice file stays words in everything that leaves the house. */
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { check } from '../../src/checks/index.ts';
import type { Format } from '../../src/documents/format.ts';
import { handoutFormats, handoutOf } from '../../src/documents/handout/index.ts';
import { summaryFormats, summaryOf } from '../../src/documents/summary/index.ts';
import { openListFormats } from '../../src/documents/open-list/open-list.ts';
import { requisitionFormats } from '../../src/documents/requisition/forms.ts';
import { requisitionOf } from '../../src/documents/requisition/requisition.ts';
import { scheduleFormats } from '../../src/documents/schedule/index.ts';
import { logFormats, specimenLog } from '../../src/documents/specimens/log.ts';
import { Caseload, factsOf } from '../../src/followup/caseload.ts';
import { scheduleOf } from '../../src/followup/schedule.ts';
import { readNote } from '../../src/note/read.ts';
import { hostile, hostileText } from './hostile.ts';
import { times } from '../share.ts';
import { tablesIn } from '../practice/tables-of.ts';

const today = '2026-03-20';

/** A note with a text in every field that takes one. JSON's quotes are YAML's too. */
function noteOf(text: string): string {
  const any = JSON.stringify(text);
  return `wheal: 1
visit: 2026-03-02 10:05
clinician: ${any}
scribe: ${any}
patient: {id: ${any}, initials: ${any}, born: 1961-08-09, email: ${any}, allergies: [${any}], medications: [${any}], conditions: [${any}], skin: [keloid, ${any}]}
consent: written
procedures:
  - site: ${any}
    landmarks: ${any}
    lesion: ${any}
    question: ${any}
    method: punch
    closure: {material: nylon, count: 2}
    sutures-due: 2026-03-14
    codes: [${any}]
    specimen: {label: ${any}, medium: ${any}, tests: [${any}], results: [{received: 2026-03-09, diagnosis: ${any}, next: ${any}}]}
  - site: left cheek
    method: punch
    closure: {material: nylon, count: 2}
    specimen: {label: ${any}, sent: 2026-03-02}
aftercare: {language: ${any}}
events:
  - {on: 2026-03-04, kind: bleeding, action: ${any}, outcome: ${any}}
  - {on: 2026-03-05, kind: call, action: ${any}, procedure: ${any}}
addenda: [{on: 2026-03-06, by: ${any}, text: ${any}}]
`;
}

const practiceOf = (text: string): string =>
  `name: ${JSON.stringify(text)}\ntelephone: ${JSON.stringify(text)}\nafter-hours: ${JSON.stringify(text)}\nwound-care: {ointment: ${JSON.stringify(text)}, first-change: ${JSON.stringify(text)}}\n`;

/** Each form of a document with what it writes. A form that is new in a table is here without a line of its own. */
function writtenIn<Input extends readonly unknown[]>(
  formats: Readonly<Record<string, Format<Input>>>,
  ...input: Input
): readonly (readonly [form: string, text: string])[] {
  return Object.entries(formats).map(([form, { write }]) => [form, write(...input)]);
}

/** Every document of a note in every form that it has. */
function documentsOf(text: string): readonly (readonly [form: string, text: string])[] {
  const tables = tablesIn(practiceOf(text));
  const source = readNote(noteOf(text));
  const note = source.value;
  assert.ok(note);
  const judgement = check(source, { tables, today });
  const summary = summaryOf(source, judgement, { tables, practice: text, today: '2026-03-20' });
  const handout = handoutOf(source, judgement, { tables, language: undefined });
  assert.ok(summary.readable && handout.readable);
  const schedule = [{ path: text, note, ...scheduleOf(note, tables, today) }];
  const caseload = new Caseload();
  caseload.set(text, factsOf(source, tables));
  caseload.set(`${text} 2`, factsOf(source, tables));
  const open = { asOf: today, notes: 2, items: caseload.openOn(today) };
  const now = new Date('2026-03-02T10:05:00Z');
  return [
    ...writtenIn(summaryFormats, summary),
    ...writtenIn(handoutFormats, handout, now),
    ...writtenIn(requisitionFormats, requisitionOf(note, tables)),
    ...writtenIn(scheduleFormats, schedule, { today, now, name: tables.practice.name }),
    ...writtenIn(openListFormats, open),
    ...writtenIn(logFormats, specimenLog([{ path: text, note, tables }], '2026-03-02')),
  ];
}

/** Cells of a table as RFC 4180 has it. */
function cellsOf(csv: string): readonly (readonly string[])[] {
  const rows: string[][] = [[]];
  for (const [, quoted, bare, end] of csv.matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n|$)/g)) {
    if (end === '' && quoted === undefined && bare === '') break;
    rows.at(-1)!.push(quoted?.replaceAll('""', '"') ?? bare ?? '');
    if (end === '\r\n') rows.push([]);
  }
  return rows.filter(({ length }) => length > 0);
}

/** A shape of a picture, whose place may depend on days in the note: no attribute but of drawing, no character that ends one. */
const shape =
  /^<(?:svg|g|path|rect|text|ellipse|circle)(?: (?:xmlns|viewBox|role|aria-label|aria-labelledby|aria-describedby|font-size|class|data-procedure|[a-z]{1,2}|width|height|fill|stroke|stroke-width|stroke-dasharray|text-anchor|font-weight|paint-order)="[-\w #(),.:/]*")*\/?>$/;

const unstyled = (html: string): string => html.replace(/<style>[^]*?<\/style>/, '');
const tagsOf = (html: string): readonly string[] => unstyled(html).match(/<[^>]*>?/g) ?? [];

/** The tags of pages in which every field is a harmless word. */
const ownTags = new Set(
  documentsOf('zzz')
    .filter(([form]) => form === 'html')
    .flatMap(([, text]) => tagsOf(text)),
);

/** What is asked of each form, by its name in the tables. */
const holds: Readonly<Record<string, (text: string) => void>> = {
  html: (text) => {
    assert.deepEqual(
      tagsOf(text).filter((tag) => !ownTags.has(tag) && !shape.test(tag)),
      [],
    );
  },
  markdown: (text) => {
    const bare = text.replace(/\\[^\n]/g, '');
    assert.doesNotMatch(bare, /[<[\]`@{}|]|https?:\/\//);
    // Our own marks begin a row, or are around a whole one.
    assert.doesNotMatch(bare.replace(/^(?:> \*\*[^*\n]*\*\*|_[^_\n]*_$|#{1,2} )/gm, ''), /[*_#>]/);
  },
  csv: (text) => {
    const [head, ...rows] = cellsOf(text);
    assert.ok(rows.length > 0);
    for (const row of rows) {
      assert.equal(row.length, head!.length, JSON.stringify(row));
      for (const cell of row) assert.doesNotMatch(cell, /^\s*[=+\-@＝＋－＠]/);
    }
  },
  ics: (text) => {
    const begun = text.match(/^BEGIN:VEVENT\r$/gm)?.length ?? 0;
    assert.ok(begun > 4);
    assert.equal(text.match(/^END:VEVENT\r$/gm)?.length, begun);
    assert.equal(text.match(/^UID[:;]/gm)?.length, begun);
    for (const line of text.replace(/\r\n /g, '').split('\r\n'))
      assert.match(line, /^(?:[A-Z-]+(?:;[A-Z]+=[A-Z-]+)*:|$)/);
  },
  eml: (text) => {
    assert.match(text, /^[\r\n\t -~]*$/);
    assert.equal(text.match(/^--=_wheal_alternative/gm)?.length, 3);
    const head = text.slice(0, text.indexOf('\r\n\r\n'));
    for (const line of head.split('\r\n'))
      assert.match(line, /^(?: |(?:MIME-Version|X-Unsent|Date|To|Subject|Content-Type): )/);
  },
  json: (text) => {
    assert.equal(typeof JSON.parse(text), 'object');
  },
  text: () => undefined,
};

const commands =
  // eslint-disable-next-line no-control-regex -- that is the question
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069]/;

function assertHarmless(text: string): void {
  // Of a note that is refused nothing is written.
  if (readNote(noteOf(text)).value === null) return;
  for (const [form, document] of documentsOf(text)) {
    assert.doesNotMatch(document, commands);
    const held = holds[form];
    assert.ok(held !== undefined, `${form} is a new form: write here what keeps a text words in it`);
    held(document);
  }
}

describe('in any document', () => {
  for (const text of hostile)
    it(`${JSON.stringify(text).slice(0, 60)} stays words`, () => {
      assert.ok(readNote(noteOf(text)).value);
      assertHarmless(text);
    });

  it('any text stays words', () => {
    fc.assert(fc.property(hostileText, assertHarmless), { numRuns: times(40) });
  });
});
