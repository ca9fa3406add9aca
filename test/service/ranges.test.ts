import assert from 'node:assert/strict';
import fc from 'fast-check';
import { noteIndex } from '../../src/note/read.ts';
import { applyEdits } from '../../src/note/tree/edit.ts';
import {
  completionsAt,
  definitionAt,
  fixAll,
  fixesAt,
  hintsIn,
  hoverAt,
  lensesOf,
  linksOf,
  outlineOf,
  selectionsAt,
} from '../../src/service/index.ts';
import { dangers } from '../campaign/notes.ts';
import { times } from '../share.ts';
import { analysed, samples, sampleTables, today } from './notes.ts';

const texts = [...samples.map(({ text }) => text), ...dangers.map(({ text }) => text)];

/** Characters of two units, of several characters, and the same between letters that YAML minds. */
const wide = ['😀', '👩🏽‍⚕️', 'e\u0301', '𝒍𝒊𝒅𝒐', '🩹:', '\u{1F489} ', '#😀', '"😀', '𠮷,'];

const writing = { tables: sampleTables, today, shapes: noteIndex, root: 'note' };

const isHigh = (code: number): boolean => code >= 0xd800 && code < 0xdc00;
const isLow = (code: number): boolean => code >= 0xdc00 && code < 0xe000;
const splitsPair = (text: string, at: number): boolean =>
  isHigh(text.charCodeAt(at - 1)) && isLow(text.charCodeAt(at));

/** Every `start` and `end` in what a feature returned, however deep. */
function* placesIn(value: unknown): Generator<number> {
  if (typeof value !== 'object' || value === null) return;
  for (const [key, inner] of Object.entries(value as Record<string, unknown>))
    if (typeof inner === 'number' && /^(?:start|end|offset)$/.test(key)) yield inner;
    else yield* placesIn(inner);
}

describe('a character of two units', function () {
  this.timeout(120_000);

  it('is never cut by a range of a finding, a fix, a hover or anything else', () => {
    const put = fc.array(fc.tuple(fc.nat(), fc.constantFrom(...wide)), { minLength: 1, maxLength: 8 });
    let places = 0;
    fc.assert(
      fc.property(fc.constantFrom(...texts), put, fc.nat(), (text, puts, place) => {
        const edits = [...new Map(puts.map(([at, word]) => [at % (text.length + 1), word]))].map(
          ([at, word]) => ({ start: at, end: at, text: word }),
        );
        const now = applyEdits(text, edits);
        const analysis = analysed(now);
        let offset = place % (now.length + 1);
        if (splitsPair(now, offset)) offset -= 1;
        const { findings } = analysis.judgement;
        const all: Readonly<Record<string, unknown>> = {
          findings: findings.map(({ start, end, related }) => ({ start, end, related })),
          fixes: fixesAt(analysis, 0, now.length)
            .slice(0, 30)
            .map(({ edits: own }) => own),
          'fix all': fixAll(analysis),
          hover: [offset, ...findings.slice(0, 5).map(({ start }) => start)].map((at) =>
            hoverAt(analysis, at),
          ),
          outline: analysis.note === null ? undefined : outlineOf(analysis.note),
          hints: hintsIn(analysis, 0, now.length),
          lenses: lensesOf(analysis),
          links: linksOf(analysis),
          definition: definitionAt(analysis, offset),
          selections: selectionsAt(analysis, offset),
          completions: completionsAt(now, offset, writing).map(({ start, end }) => ({ start, end })),
        };
        for (const [name, one] of Object.entries(all))
          for (const found of placesIn(one)) {
            places += 1;
            assert.ok(!splitsPair(now, found), `${name}: ${found} in ${JSON.stringify(now)}`);
          }
      }),
      { numRuns: times(300) },
    );
    assert.ok(places > 1000, `${places} places`);
  });
});
