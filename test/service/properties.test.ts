import assert from 'node:assert/strict';
import type { TextEdit } from '../../src/note/finding.ts';
import { applyEdits } from '../../src/note/edit.ts';
import { noteIndex } from '../../src/note/read.ts';
import {
  completionsAt,
  definitionAt,
  fixAll,
  fixesAt,
  hintsIn,
  hoverAt,
  lensesOf,
  linksOf,
  selectionsAt,
  statusOf,
  type Analysis,
  type OfferedFix,
} from '../../src/service/index.ts';
import { analysed, pageExamples, sampleTables, samples, today, type Sample } from './notes.ts';

const writing = { tables: sampleTables, today, shapes: noteIndex, root: 'note' };

/** How many findings of each code there are; of all severities, or of errors and warnings alone. */
function counted({ judgement }: Analysis, loud: boolean): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { code, severity } of judgement.findings)
    if (!loud || severity === 'error' || severity === 'warning')
      counts.set(code, (counts.get(code) ?? 0) + 1);
  return counts;
}

/** Rows that no edit touches stay as they are, byte for byte. */
function assertRowsKept(before: string, edits: readonly TextEdit[]): void {
  const after = applyEdits(before, edits);
  let shift = 0;
  let from = 0;
  for (const { start, end, text } of [...edits].sort((a, b) => a.start - b.start)) {
    assert.equal(after.slice(from + shift, start + shift), before.slice(from, start));
    shift += text.length - (end - start);
    from = end;
  }
  assert.equal(after.slice(from + shift), before.slice(from));
}

/**
 * Findings about words that could not be read, and were therefore not judged. Mending them may show what they hid; no
 * other fix may.
 */
const hides = /^yaml\/|^allergy\/unclear-entry$/;

/** Says what a word means, which may well be the danger. */
const clarifies: ReadonlySet<string> = new Set(['correct the record: electrosurgery']);

/** Whether a finding is gone; of what was filled in as `??` the `??` may be the finding. */
function isGone({ code, does, title }: OfferedFix, before: Analysis, after: Analysis): boolean {
  const left = after.judgement.findings.filter(
    (one) => one.code === code && !(does === 'fill' && after.text.slice(one.start, one.end) === '??'),
  );
  return clarifies.has(title) || left.length < (counted(before, false).get(code) ?? 0);
}

function assertMends(name: string, before: Analysis, fix: OfferedFix): void {
  const after = analysed(applyEdits(before.text, fix.edits));
  const what = `${name}: ${fix.title} (${fix.code})\n${after.text}`;
  assertRowsKept(before.text, fix.edits);
  if (fix.does !== 'accept') assert.ok(isGone(fix, before, after), `the finding stays: ${what}`);
  if (!hides.test(fix.code)) assertNothingNew(before, after, fix.does !== 'mend', what);
}

/** What `??` leaves: itself, and a specimen of which nobody knows weeks later whether it was sent. */
const pending: ReadonlySet<string> = new Set(['shape/pending', 'follow-up/specimen-not-sent']);

function assertNothingNew(before: Analysis, after: Analysis, asks: boolean, what: string): void {
  const were = counted(before, true);
  for (const [code, count] of counted(after, true))
    if (!(asks && pending.has(code))) assert.ok(count <= (were.get(code) ?? 0), `${code} is new: ${what}`);
}

describe('each fix', () => {
  const notes: readonly Sample[] = [...samples, ...pageExamples];
  it('takes its finding away, adds no error and no warning, and leaves untouched rows as they are', () => {
    const tried = new Map<string, number>();
    for (const { name, text } of notes) {
      const before = analysed(text);
      for (const fix of fixesAt(before, 0, text.length)) {
        // What is missing or accepted is written alike everywhere: three places of each stand for all.
        const kind = `${fix.code} ${fix.title}`;
        const times = tried.get(kind) ?? 0;
        tried.set(kind, times + 1);
        if (fix.does === 'mend' || times < 3) assertMends(name, before, fix);
      }
    }
    assert.ok(tried.size > 150, `only ${tried.size} kinds of fixes were tried`);
  });

  it('that is sure joins "fix all", which mends them together', () => {
    for (const { name, text } of notes) {
      const edits = fixAll(analysed(text));
      if (edits.length === 0) continue;
      assertRowsKept(text, edits);
      const before = analysed(text);
      if (before.judgement.findings.some(({ code }) => hides.test(code))) continue;
      assertNothingNew(before, analysed(applyEdits(text, edits)), false, name);
    }
  });
});

describe('every offset of every sample', () => {
  for (const { name, text } of samples)
    it(`is answered without an error: ${name}`, () => {
      const analysis = analysed(text);
      for (let offset = 0; offset <= text.length; offset++) {
        const hover = hoverAt(analysis, offset);
        assert.ok(hover === undefined || (hover.start <= offset && offset <= hover.end));
        definitionAt(analysis, offset);
        const ranges = selectionsAt(analysis, offset);
        for (const [at, { start, end }] of ranges.entries()) {
          const outer = ranges[at + 1];
          assert.ok(start <= offset && offset <= end);
          assert.ok(outer === undefined || (outer.start <= start && end <= outer.end));
        }
        if (offset % 4 === 0) fixesAt(analysis, offset, offset);
        if (offset % 11 === 0)
          for (const { start, end } of completionsAt(text, offset, writing))
            assert.ok(start <= offset && offset <= end);
      }
    });

  it('and every prefix of it', () => {
    for (const { text } of samples.slice(0, 6))
      for (let length = 0; length <= text.length; length += 41) {
        const analysis = analysed(text.slice(0, length));
        hoverAt(analysis, length);
        fixesAt(analysis, 0, length);
        fixAll(analysis);
        hintsIn(analysis, 0, length);
        lensesOf(analysis);
        linksOf(analysis);
        statusOf(analysis);
        completionsAt(text.slice(0, length), length, writing);
      }
  });
});
