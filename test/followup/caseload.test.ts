import assert from 'node:assert/strict';
import fc from 'fast-check';
import { Caseload, factsOf, unreadFacts, type OpenItem } from '../../src/followup/caseload.ts';
import { factsOfRow, rowOfFacts } from '../../src/followup/kept-facts.ts';
import { inSlices, sortInSlices } from '../../src/followup/slices.ts';
import { readNote } from '../../src/note/read.ts';
import { referenceTables } from '../../src/practice/tables.ts';

const note = (rest: string, id = 'C-1'): string => `visit: 2026-03-02
patient: {id: ${id}}
procedures:
  - site: chin
    method: shave
    closure: none
    specimen: {label: A, sent: 2026-03-02${rest}}
`;

function caseloadOf(texts: Readonly<Record<string, string>>): Caseload {
  const caseload = new Caseload();
  for (const [path, text] of Object.entries(texts))
    caseload.set(path, factsOf(readNote(text), referenceTables));
  return caseload;
}

const brief = (items: readonly OpenItem[]): readonly string[] =>
  items.map(({ path, group }) => `${path} ${group}`);

describe('caseload', () => {
  it('lists what is open by what is to be done', () => {
    const caseload = caseloadOf({
      a: note(''),
      b: note(', result: {received: 2026-03-09, diagnosis: nevus}', 'C-2'),
      c: note(
        ', result: {received: 2026-03-09, diagnosis: nevus, told: 2026-03-10, next: none needed}',
        'C-3',
      ),
    });
    assert.deepEqual(brief(caseload.openOn('2026-03-10')), ['b tell', 'a results']);
  });

  it('says it louder with time, and never ends in silence', () => {
    const caseload = caseloadOf({ a: note('') });
    const loudness = (day: string): number => caseload.openOn(day)[0]!.loudness;
    assert.deepEqual(
      ['2026-03-10', '2026-03-17', '2026-04-01', '2026-06-01', '2046-06-01'].map(loudness),
      [0, 1, 2, 3, 3],
    );
  });

  it('puts what cannot wait first', () => {
    const caseload = caseloadOf({
      a: note(', result: {received: 2026-03-03, diagnosis: nevus}'),
      b: note(', result: {received: 2026-03-09, diagnosis: melanoma}', 'C-2'),
    });
    assert.deepEqual(brief(caseload.openOn('2026-03-12')), ['b tell', 'a tell']);
  });

  it('lists the same while others get their turn', async () => {
    const caseload = caseloadOf({ a: note(''), b: note('', 'C-2'), c: note(''), d: '- no\n' });
    let time = 0;
    let pauses = 0;
    const pace = {
      now: () => (time += 6),
      pause: () => {
        pauses += 1;
        return Promise.resolve();
      },
    };
    assert.deepEqual(await caseload.openInSlices('2026-03-20', pace), caseload.openOn('2026-03-20'));
    assert.ok(pauses > 0);
  });

  it('calls another note by the name that it was given', () => {
    const caseload = new Caseload((path) => `the note ${path}`);
    for (const path of ['a', 'b']) caseload.set(path, factsOf(readNote(note('')), referenceTables));
    const [first] = caseload.openOn('2026-03-03').filter(({ group }) => group === 'look');
    assert.equal(first?.what, 'label A of this patient and day is in the note b too');
  });

  it('keeps a note that cannot be read, or not in part, on the list', () => {
    const caseload = caseloadOf({ a: '- no\n- note\n', b: note('').replace('{label: A,', '{label: A, ]') });
    caseload.set('c', unreadFacts('you are not permitted to read it'));
    const open = caseload.openOn('2026-03-10');
    assert.deepEqual(brief(open.filter(({ group }) => group === 'look')), ['a look', 'b look', 'c look']);
  });

  it('keeps tissue of which nothing more is said on the list', () => {
    const caseload = caseloadOf({ a: note('').replace(/ +specimen:.*\n/, '') });
    assert.deepEqual(brief(caseload.openOn('2026-03-10')), ['a send']);
  });

  it('sees the same label twice for one patient and day, and only then', () => {
    const looks = (texts: Readonly<Record<string, string>>): readonly string[] =>
      brief(caseloadOf(texts).openOn('2026-03-03')).filter((item) => item.endsWith('look'));
    assert.deepEqual(looks({ a: note(''), b: note('') }), ['a look', 'b look']);
    assert.deepEqual(looks({ a: note(''), b: note('', 'C-2') }), []);
    assert.deepEqual(
      looks({ a: note(''), b: note('').replace('visit: 2026-03-02', 'visit: 2026-03-03') }),
      [],
    );
    assert.deepEqual(looks({ a: note(''), b: note('').replace('label: A', 'label: B') }), []);
  });

  const bornOn = (born: string, id = 'C-1'): string =>
    note('').replace('{id: C-1}', `{id: ${id}, born: ${born}}`).replace('label: A', `label: ${born}`);
  const births = (texts: Readonly<Record<string, string>>): readonly OpenItem[] =>
    caseloadOf(texts)
      .openOn('2026-03-03')
      .filter(({ group }) => group === 'look');

  it('sees one chart number with two dates of birth, and points at the date', () => {
    const found = births({ a: bornOn('1961-08-09'), b: bornOn('1961-09-08', 'c-1') });
    assert.deepEqual(brief(found), ['a look', 'b look']);
    const [{ start, end, line, what, loudness } = assert.fail()] = found;
    assert.equal(bornOn('1961-08-09').slice(start, end), '1961-08-09');
    assert.equal(line, 1);
    assert.equal(what, 'chart number C-1 is born on 1961-08-09 here, and on another day in b');
    assert.equal(loudness, 1);
  });

  it('shows of many notes of a chart number those that differ from most', () => {
    const most = bornOn('1961-08-09');
    const found = births({
      a: most.replace('label', 'x'),
      b: most.replace('visit: 2026-03-02', 'visit: 2026-03-01'),
      c: bornOn('1961-09-08'),
    });
    assert.deepEqual(
      found.map(({ path, what }) => [path, what]),
      [['c', 'chart number C-1 is born on 1961-09-08 here, and on another day in a, b']],
    );
  });

  it('is content with one date of birth, with none, and with other chart numbers', () => {
    const one = bornOn('1961-08-09');
    const later = one.replace('visit: 2026-03-02', 'visit: 2026-03-01');
    assert.deepEqual(births({ a: one, b: later }), []);
    assert.deepEqual(births({ a: one, b: bornOn('1961-09-08', 'C-2') }), []);
    assert.deepEqual(births({ a: one, b: note('') }), []);
    assert.deepEqual(births({ a: one, b: bornOn('??') }), []);
  });

  it('takes one changed file for what it now says, and forgets one that is gone', () => {
    const caseload = caseloadOf({ a: note(''), b: note('', 'C-2') });
    caseload.set(
      'a',
      factsOf(
        readNote(note(', result: {received: 2026-03-09, diagnosis: nevus, told: 2026-03-10}')),
        referenceTables,
      ),
    );
    caseload.delete('b');
    assert.deepEqual(caseload.openOn('2026-03-11'), []);
    assert.equal(caseload.size, 1);
  });

  it('has facts that say the same when they were kept, from the day on that they reach', () => {
    const texts = [
      note(''),
      note(', result: {received: 2026-03-09, diagnosis: melanoma}'),
      note(', result: {received: 2026-03-09, diagnosis: nevus, told: 2026-03-10}'),
      '- no\n- note\n',
      bornOn('1962-01-01'),
    ];
    const other = factsOf(readNote(bornOn('1961-08-09')), referenceTables);
    for (const text of texts)
      for (const day of ['2026-03-01', '2026-03-09', '2026-03-10', '2026-05-01']) {
        const facts = factsOf(readNote(text), referenceTables);
        const kept = factsOfRow(rowOfFacts(facts), day);
        if (kept === undefined) continue;
        const [again, straight] = [new Caseload(), new Caseload()];
        again.set('a', kept);
        straight.set('a', facts);
        for (const caseload of [again, straight]) caseload.set('b', other);
        assert.deepEqual(JSON.stringify(again.openOn(day)), JSON.stringify(straight.openOn(day)));
      }
  });

  it('is not asked of a row about days before the last thing was done', () => {
    const row = rowOfFacts(
      factsOf(
        readNote(note(', result: {received: 2026-03-09, diagnosis: nevus, told: 2026-03-10}')),
        referenceTables,
      ),
    );
    assert.equal(factsOfRow(row, '2026-03-09'), undefined);
    assert.notEqual(factsOfRow(row, '2026-03-10'), undefined);
    assert.doesNotMatch(row, /[\n\r]/);
  });
});

describe('work in slices', () => {
  it('lets others have their turn every 10 ms, and does everything in order', async () => {
    let time = 0;
    let pauses = 0;
    const done: number[] = [];
    const count = await inSlices(
      [1, 2, 3, 4, 5, 6],
      (item) => {
        done.push(item);
        time += 4;
      },
      {
        now: () => time,
        pause: () => {
          pauses += 1;
          time += 100;
          return Promise.resolve();
        },
      },
    );
    assert.deepEqual([done, count, pauses], [[1, 2, 3, 4, 5, 6], 6, 2]);
  });

  it('sorts as at once, equals as they came', async () => {
    const by = (a: { readonly key: number }, b: { readonly key: number }): number => a.key - b.key;
    const pace = { now: () => 0, pause: () => Promise.resolve() };
    const keys = fc.array(fc.nat(9), { maxLength: 3000, size: 'max' });
    await fc.assert(
      fc.asyncProperty(keys, async (list) => {
        const items = list.map((key, place) => ({ key, place }));
        assert.deepEqual(await sortInSlices(items, by, pace), [...items].sort(by));
      }),
      { numRuns: 20 },
    );
  });

  it('stops between slices where it is no longer wanted', async () => {
    let time = 0;
    const count = await inSlices([1, 2, 3], () => void (time += 20), {
      now: () => time,
      pause: () => Promise.resolve(),
      wanted: () => time < 40,
    });
    assert.equal(count, 2);
  });
});
