import assert from 'node:assert/strict';
import {
  afterEdit,
  afterMove,
  afterNews,
  afterPause,
  atRest,
  type Shown,
} from '../../../src/service/diagnostics/while-typing.ts';
import type { Finding } from '../../../src/note/tree/finding.ts';

const finding = (code: string, start: number, end: number, rest: Partial<Finding> = {}): Finding => ({
  code,
  severity: 'error',
  start,
  end,
  form: 'main',
  args: {},
  related: [],
  ...rest,
});

/** Finds each `bad` as record/bad and each `40 mL` as a danger. */
const judge = (text: string): Finding[] => [
  ...[...text.matchAll(/bad/g)].map((match) => finding('record/bad', match.index, match.index + 3)),
  ...[...text.matchAll(/40 mL/g)].map((match) => finding('dose/over-limit', match.index, match.index + 5)),
  ...[...text.matchAll(/\bm$/gm)].map((match) => finding('quantity/unit', match.index, match.index + 1)),
];

const words = ({ text, findings }: Shown): string[] =>
  findings.map(({ start, end }) => text.slice(start, end));

/** Types letters at an offset, one by one, and answers what shows after each. */
function typed(shown: Shown, at: number, letters: string): Shown[] {
  const states: Shown[] = [];
  let now = shown;
  for (const [index, letter] of Array.from(letters).entries()) {
    const place = at + index;
    const text = now.text.slice(0, place) + letter + now.text.slice(place);
    const line = text.slice(0, place).split('\n').length - 1;
    now = afterEdit(now, text, { start: place, end: place, inserted: letter }, { line, character: 0 }, judge);
    states.push(now);
  }
  return states;
}

describe('the quiet row', () => {
  it('shows nothing new while a row is typed, and keeps what is wrong elsewhere at its place', () => {
    const states = typed(atRest('one\n\nthree bad\n', judge), 4, 'two bad 40 mL');
    for (const state of states) assert.deepEqual(words(state), ['bad']);
    assert.equal(states.at(-1)?.findings[0]?.start, states.at(-1)?.text.lastIndexOf('bad'));
  });

  it('shows a finished danger on its row after a pause, and only that', () => {
    const last = typed(atRest('one\n\nthree\n', judge), 4, 'bad 40 mL').at(-1)!;
    assert.deepEqual(words(afterPause(last, judge)), ['40 mL']);
  });

  it('believes no row that can not be read yet', () => {
    const last = typed(atRest('one\n\nthree\n', judge), 4, '40 mL m').at(-1)!;
    assert.deepEqual(words(afterPause(last, judge)), []);
  });

  it('shows all once the row is left', () => {
    const last = typed(atRest('one\n\nthree\n', judge), 4, 'bad 40 mL').at(-1)!;
    assert.deepEqual(words(afterMove(last, { line: 2, character: 0 }, judge)), ['bad', '40 mL']);
    assert.equal(afterMove(last, { line: 1, character: 3 }, judge), last);
  });

  it('takes away what the row has mended elsewhere, after a pause', () => {
    const sum = (text: string): Finding[] => (text.includes('big') ? [] : [finding('record/bad', 0, 3)]);
    const rest = atRest('one\n\nthree\n', sum);
    const edited = afterEdit(
      rest,
      'one\nbig\nthree\n',
      { start: 4, end: 4, inserted: 'big' },
      { line: 1, character: 3 },
      sum,
    );
    assert.equal(edited.findings.length, 1);
    assert.equal(afterPause(edited, sum).findings.length, 0);
  });

  it('asks for nothing missing from the part that is being written, until it is left', () => {
    const missing = (text: string): Finding[] =>
      text.includes('item')
        ? [
            finding('record/missing', text.indexOf('item'), text.indexOf('item') + 4, {
              missingFrom: { start: text.indexOf('item'), end: text.length },
            }),
          ]
        : [];
    const rest = atRest('top\n', missing);
    const inside = afterEdit(
      rest,
      'top\n  item\n  ',
      { start: 4, end: 4, inserted: '  item\n  ' },
      { line: 2, character: 2 },
      missing,
    );
    assert.deepEqual(words(inside), []);
    assert.deepEqual(words(afterMove(inside, { line: 0, character: 0 }, missing)), ['item']);
    const typedOn = afterEdit(
      inside,
      'top\n  item\n  x',
      { start: 13, end: 13, inserted: 'x' },
      { line: 2, character: 3 },
      missing,
    );
    assert.deepEqual(words(afterMove(typedOn, { line: 0, character: 0 }, missing)), ['item']);
  });

  it('goes on asking for what was asked for before', () => {
    const missing = (text: string): Finding[] => [
      finding('record/missing', 0, 3, { missingFrom: { start: 0, end: text.length } }),
    ];
    const rest = atRest('top\none\n', missing);
    const [state] = [
      afterEdit(rest, 'top\none!\n', { start: 7, end: 7, inserted: '!' }, { line: 1, character: 4 }, missing),
    ];
    assert.deepEqual(words(state), ['top']);
    assert.deepEqual(words(afterMove(state, { line: 2, character: 0 }, missing)), ['top']);
  });

  it('judges again what something outside has changed, but not the row that is typed', () => {
    const rest = atRest('one bad\n', () => []);
    assert.deepEqual(words(afterNews(rest, undefined, judge)), ['bad']);
    assert.deepEqual(words(afterNews(rest, { line: 0, character: 0 }, judge)), ['bad']);
    const last = typed(atRest('one\n\nthree\n', judge), 4, 'bad').at(-1)!;
    assert.equal(afterNews(last, { line: 1, character: 3 }, judge), last);
    assert.deepEqual(words(afterMove(last, { line: 2, character: 0 }, judge)), ['bad']);
  });

  it('does not ask for more in the part that holds the caret because of something outside', () => {
    const missing = (text: string): Finding[] => [
      finding('record/missing', 0, 3, { missingFrom: { start: 0, end: text.length } }),
    ];
    const rest = atRest('top\none\n', () => []);
    assert.deepEqual(words(afterNews(rest, { line: 1, character: 0 }, missing)), []);
  });

  it('judges an edit over several rows at once', () => {
    const rest = atRest('one\n', judge);
    assert.deepEqual(
      words(
        afterEdit(
          rest,
          'one\nbad\nbad\n',
          { start: 4, end: 4, inserted: 'bad\nbad\n' },
          { line: 3, character: 0 },
          judge,
        ),
      ),
      ['bad', 'bad'],
    );
  });
});
