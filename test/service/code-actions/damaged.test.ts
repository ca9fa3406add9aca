import assert from 'node:assert/strict';
import fc from 'fast-check';
import { familyOf } from '../../../src/checks/danger.ts';
import { applyEdits } from '../../../src/note/tree/edit.ts';
import { fixAll, fixesAt, type Analysis } from '../../../src/service/index.ts';
import { completionsAt } from '../../../src/service/index.ts';
import { noteIndex } from '../../../src/note/read.ts';
import { dangers } from '../../campaign/notes.ts';
import { times } from '../../share.ts';
import { analysed, samples, sampleTables, today } from '../notes.ts';

/** Right notes, and notes of a danger each. */
const right = samples.filter(({ name }) => /^(?:ok|right)\//.test(name));

const writing = { tables: sampleTables, today, shapes: noteIndex, root: 'note' };

interface Damage {
  readonly text: string;
  readonly at: number;
  /** What is put there; nothing where a character is taken out. */
  readonly put: string;
}

const damages: fc.Arbitrary<Damage> = fc.record({
  text: fc.constantFrom(...right.map(({ text }) => text), ...dangers.map(({ text }) => text)),
  at: fc.nat(),
  put: fc.constantFrom(
    '',
    '',
    ' ',
    '  ',
    ':',
    '{',
    '[',
    ']',
    '}',
    '"',
    "'",
    ',',
    '#',
    '-',
    '\n',
    '?',
    '\t',
    'x',
  ),
});

function damaged({ text, at, put }: Damage): string {
  const place = at % text.length;
  return text.slice(0, place) + put + text.slice(place + (put === '' ? 1 : 0));
}

/** How many findings of YAML there are of each code. */
function yamlOf({ judgement }: Analysis): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { code } of judgement.findings)
    if (familyOf(code) === 'yaml') counts.set(code, (counts.get(code) ?? 0) + 1);
  return counts;
}

/** Errors that a word or a part can't be read: a slip that is put right takes them away. */
const unreadOnly = /^dose\/(?:cannot-judge|unknown-|concentration-missing)/;

/** The errors that are dangers: of dose, allergy, device and medium. */
const dangersOf = ({ judgement }: Analysis): readonly string[] =>
  judgement.findings
    .filter(
      ({ code, severity }) =>
        severity === 'error' && /^(?:dose|allergy|device)\/|^specimen\/wrong-medium$/.test(code),
    )
    .map(({ code }) => code);

const doseOf = ({ judgement: { dose } }: Analysis): string | undefined =>
  dose?.judged === true
    ? JSON.stringify([dose, ...dose.later].map(({ given }) => given.map(({ mg }) => mg)))
    : undefined;

/** What a completion of a text does to it. */
function assertHarmless(text: string, place: number, besides: RegExp): void {
  const before = analysed(text);
  const were = yamlOf(before);
  const offset = place % (text.length + 1);
  const all = completionsAt(text, offset, writing);
  for (const { start, end, insert, label } of [...all.slice(0, 6), ...all.slice(-2)]) {
    const after = analysed(applyEdits(text, [{ start, end, text: insert }]));
    const what = `${label} at ${offset}\n${after.text}`;
    assert.ok(before.root === null || after.root !== null, `can't be read: ${what}`);
    for (const [code, count] of yamlOf(after))
      if (!besides.test(code)) assert.ok(count <= (were.get(code) ?? 0), `${code} is new: ${what}`);
  }
}

describe('on a text with one slip', function () {
  this.timeout(120_000);

  it('each fix takes its finding of YAML away, adds none and leaves a note that can be read', () => {
    assert.ok(right.length > 20, `${right.length} notes`);
    fc.assert(
      fc.property(damages, (damage) => {
        const before = analysed(damaged(damage));
        const were = yamlOf(before);
        if (were.size === 0) return;
        for (const { edits, code, does, title } of fixesAt(before, 0, before.text.length).slice(0, 12)) {
          const after = analysed(applyEdits(before.text, edits));
          const what = `${code}: ${title}\n${after.text}`;
          assert.ok(before.root === null || after.root !== null, `can't be read: ${what}`);
          const now = yamlOf(after);
          for (const [one, count] of now) assert.ok(count <= (were.get(one) ?? 0), `${one} is new: ${what}`);
          if (does === 'mend' && familyOf(code) === 'yaml')
            assert.ok((now.get(code) ?? 0) < (were.get(code) ?? 0), `stays: ${what}`);
        }
      }),
      { numRuns: times(300) },
    );
  });

  it('"fix all" takes no danger away, changes no judged dose, and done twice changes nothing more', () => {
    fc.assert(
      fc.property(damages, (damage) => {
        const before = analysed(damaged(damage));
        const edits = fixAll(before);
        if (edits.length === 0) return;
        const after = analysed(applyEdits(before.text, edits));
        const left = dangersOf(after);
        const gone = dangersOf(before).filter((code) => !unreadOnly.test(code) && !left.includes(code));
        assert.deepEqual(gone, [], after.text);
        const dose = doseOf(before);
        if (dose !== undefined) assert.equal(doseOf(after), dose, after.text);
        assert.deepEqual(fixAll(after), [], after.text);
      }),
      { numRuns: times(500) },
    );
  });

  it('each completion leaves a note that can be read, and damages nothing', () => {
    // Beside damage a key may be written that is there already, further on.
    fc.assert(
      fc.property(damages, fc.nat(), (damage, place) => {
        assertHarmless(damaged(damage), place, /^yaml\/(?:duplicate-key|needs-quotes)$/);
      }),
      { numRuns: times(400), seed: 20260302 },
    );
  });
});

describe('on a whole text', function () {
  this.timeout(120_000);
  it('each completion leaves a note that can be read, and damages nothing', () => {
    fc.assert(
      fc.property(fc.constantFrom(...right), fc.nat(), ({ text }, place) => {
        // A note that is one map between brackets may have the key many lines further on.
        assertHarmless(text, place, text.includes('\n{') ? /^yaml\/duplicate-key$/ : /^$/);
      }),
      { numRuns: times(400), seed: 20260302 },
    );
  });
});
