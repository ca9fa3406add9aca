import assert from 'node:assert/strict';
import { isCollection, isMap, parseDocument } from 'yaml';
import { signatureEdit } from '../../src/note/signature/sign.ts';
import { verify } from '../../src/note/signature/verify.ts';
import type { TextEdit } from '../../src/note/tree/finding.ts';
import { applyEdits } from '../../src/note/tree/edit.ts';
import { isAcceptable } from '../../src/service/code-actions/accept.ts';
import { noteIndex, readNote } from '../../src/note/read.ts';
import {
  analyse,
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
import { step, times } from '../share.ts';
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

/** Lines that no edit touches stay as they are, byte for byte. */
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
const clarifies =
  /^correct the record: (?:electrosurgery$|(?:allergies|implants|conditions|medications)(?:: | as \?\?$))/;

/** Whether a fix leaves `??` for somebody to fill in. */
const leavesGap = ({ edits }: OfferedFix): boolean => edits.some(({ text }) => text.includes('??'));

/** Whether a finding is gone; of what was filled in as `??` the `??` may be the finding. */
function isGone({ code, does, title }: OfferedFix, before: Analysis, after: Analysis): boolean {
  const left = after.judgement.findings.filter(
    (one) => one.code === code && !(does === 'fill' && after.text.slice(one.start, one.end) === '??'),
  );
  return clarifies.test(title) || left.length < (counted(before, false).get(code) ?? 0);
}

/** Judges a text as another was judged. */
const alike = ({ context }: Analysis, text: string): Analysis => analyse(text, context);

function assertMends(name: string, before: Analysis, fix: OfferedFix): void {
  const after = alike(before, applyEdits(before.text, fix.edits));
  const what = `${name}: ${fix.title} (${fix.code})\n${after.text}`;
  assertRowsKept(before.text, fix.edits);
  // What to do now fixes nothing, and what is accepted stays to be seen.
  const mends = fix.does === 'mend' || fix.does === 'fill';
  if (mends) assert.ok(isGone(fix, before, after), `the finding stays: ${what}`);
  if (!hides.test(fix.code) && !clarifies.test(fix.title))
    assertNothingNew(before, after, followsOf(fix), what);
}

/** What may come of a fix: `??` itself, and what cannot be known to be done any more, or is known to be due. */
function followsOf(fix: OfferedFix): RegExp {
  if (fix.kind === 'record') return /^(shape\/pending|follow-up\/.*)$/;
  return leavesGap(fix) ? /^(shape\/pending|follow-up\/specimen-not-sent)$/ : /^$/;
}

function assertNothingNew(before: Analysis, after: Analysis, follows: RegExp, what: string): void {
  const were = counted(before, true);
  for (const [code, count] of counted(after, true))
    if (!follows.test(code)) assert.ok(count <= (were.get(code) ?? 0), `${code} is new: ${what}`);
}

const isCorrection = ({ kind, does }: OfferedFix): boolean => kind === 'record' && does === 'mend';

/** What corrects the record says so, is no sure thing, comes after spelling, and has accepting beside it if that may be. */
function assertCareful(fix: OfferedFix, all: readonly OfferedFix[], name: string): void {
  const what = `${name}: ${fix.title} (${fix.code})`;
  assert.match(fix.title, /^correct the record: /, what);
  assert.equal(fix.sure, false, what);
  assert.ok(
    all.indexOf(fix) > all.findLastIndex(({ kind, does }) => kind === 'spelling' && does === 'mend'),
    what,
  );
  if (!isAcceptable(fix.finding)) return;
  assert.ok(
    all.slice(all.indexOf(fix)).some(({ does, finding }) => does === 'accept' && finding === fix.finding),
    `no accepting beside ${what}`,
  );
}

/** The same note with its lists and maps between brackets; undefined where it is no whole YAML. */
function inFlow(text: string): string | undefined {
  const document = parseDocument(text, { schema: 'failsafe' });
  if (document.errors.length > 0 || !isMap(document.contents)) return undefined;
  for (const { value } of document.contents.items) if (isCollection(value)) value.flow = true;
  return document.toString({ lineWidth: 0, flowCollectionPadding: false });
}

const inCrlf = (text: string): string => text.replace(/\r?\n/g, '\r\n');

describe('each fix', function () {
  // Thousands of notes are judged.
  this.timeout(120_000);
  const notes: readonly Sample[] = [...samples, ...pageExamples].filter((_, at) => at % step(1) === 0);
  const known = new WeakMap<Sample, Analysis>();
  const judged = (sample: Sample): Analysis => {
    const analysis = known.get(sample) ?? analysed(sample.text, sample.tables, sample.today);
    known.set(sample, analysis);
    return analysis;
  };

  /** Tries every fix of every note; of each kind only as often as is said. Answers the kinds. */
  function tryAll(some: readonly Sample[], most: (fix: OfferedFix) => number): ReadonlySet<string> {
    const tried = new Map<string, number>();
    for (const sample of some) {
      const before = judged(sample);
      const fixes = fixesAt(before, 0, before.text.length);
      for (const fix of fixes) {
        const kind = `${fix.code} ${fix.title}`;
        const times = tried.get(kind) ?? 0;
        tried.set(kind, times + 1);
        if (times < most(fix)) assertMends(sample.name, before, fix);
        if (isCorrection(fix)) assertCareful(fix, fixes, sample.name);
      }
    }
    return new Set(tried.keys());
  }

  it('takes its finding away, adds no error and no warning, and leaves untouched rows as they are', () => {
    // What is missing or accepted is written alike everywhere: three places of each are enough.
    const kinds = tryAll(notes, ({ does }) => (does === 'mend' ? Infinity : 3));
    assert.ok(kinds.size > times(150), `only ${kinds.size} kinds of fixes were tried`);
    const corrects = [...kinds].filter((kind) => kind.includes('correct the record: '));
    assert.ok(corrects.length > times(50), `only ${corrects.length} kinds of corrections were tried`);
  });

  /** Those in which something is wrong. */
  const faulty = notes.filter(({ name }) => !name.startsWith('ok/'));

  it('does so between brackets too', () => {
    const some = faulty.flatMap((sample) => {
      const text = inFlow(sample.text);
      return text === undefined ? [] : [{ ...sample, name: `${sample.name} in flow style`, text }];
    });
    assert.ok(some.length > faulty.length / 2);
    assert.ok(tryAll(some, () => 1).size > times(150));
  });

  it('keeps the line breaks of its file', () => {
    const some = faulty.map((sample) => ({ ...sample, text: inCrlf(sample.text) }));
    const kinds = new Set<string>();
    for (const sample of some) {
      const before = judged(sample);
      for (const fix of fixesAt(before, 0, before.text.length)) {
        const kind = `${fix.code} ${fix.title}`;
        if (kinds.has(kind)) continue;
        kinds.add(kind);
        const after = applyEdits(before.text, fix.edits);
        assert.doesNotMatch(after, /(?<!\r)\n|\r(?!\n)/, `${sample.name}: ${kind}`);
        assertMends(sample.name, before, fix);
      }
    }
    assert.ok(kinds.size > times(150));
  });

  it('that is sure joins "fix all", which mends them together', () => {
    for (const sample of notes) {
      const before = judged(sample);
      const edits = fixAll(before);
      if (edits.length === 0) continue;
      assertRowsKept(sample.text, edits);
      if (before.judgement.findings.some(({ code }) => hides.test(code))) continue;
      assertNothingNew(before, alike(before, applyEdits(sample.text, edits)), /^$/, sample.name);
    }
  });

  it('leaves a signature as it is, alone and with all others', () => {
    let tried = 0;
    const seen = new Set<string>();
    for (const sample of faulty) {
      const edit = signatureEdit(readNote(sample.text), 'K.O.', '2026-03-02 12:00');
      if (typeof edit === 'string') continue;
      const signed = judged({ ...sample, text: applyEdits(sample.text, [edit]) });
      const fixes = fixesAt(signed, 0, signed.text.length).filter(({ code, does }) => {
        const kind = `${code} ${does}`;
        return !seen.has(kind) && seen.add(kind);
      });
      const all: readonly (readonly TextEdit[])[] = [...fixes.map(({ edits }) => edits), fixAll(signed)];
      for (const edits of all.filter(({ length }) => length > 0)) {
        const after = verify(readNote(applyEdits(signed.text, edits)));
        assert.deepEqual(
          // What is accepted later waits for its author.
          after.kind === 'signed' && after.changes.filter(({ what }) => what !== 'without author and date'),
          [],
          `${sample.name} ${JSON.stringify(edits)}`,
        );
        tried += 1;
      }
    }
    assert.ok(tried > times(50), `only ${tried} fixes of signed notes were tried`);
  });
});

describe('every offset of every sample', () => {
  const some = samples.filter((_, at) => at % step(1) === 0);
  for (const { name, text } of some)
    it(`is answered without an error: ${name}`, () => {
      const analysis = analysed(text);
      const apart = step(1);
      for (let offset = 0; offset <= text.length; offset += apart) {
        const hover = hoverAt(analysis, offset);
        assert.ok(hover === undefined || (hover.start <= offset && offset <= hover.end));
        definitionAt(analysis, offset);
        const ranges = selectionsAt(analysis, offset);
        for (const [at, { start, end }] of ranges.entries()) {
          const outer = ranges[at + 1];
          assert.ok(start <= offset && offset <= end);
          assert.ok(outer === undefined || (outer.start <= start && end <= outer.end));
        }
        if ((offset / apart) % 4 === 0) fixesAt(analysis, offset, offset);
        if ((offset / apart) % 11 === 0)
          for (const { start, end } of completionsAt(text, offset, writing))
            assert.ok(start <= offset && offset <= end);
      }
    });

  it('and every prefix of it', () => {
    for (const { text } of samples.slice(0, 6))
      for (let length = 0; length <= text.length; length += step(41)) {
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
