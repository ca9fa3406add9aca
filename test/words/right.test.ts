import assert from 'node:assert/strict';
import { isLoud, lineOf, notesIn, share, shownOf } from './fixtures.ts';

/** The goal is 98; what is not silent yet is printed. */
const reached = 95;

/** Days after everything in the notes has happened. */
const days = { right: '2026-08-01', lean: '2026-11-30' };

describe('right notes in the words of five scribes', () => {
  const notes = notesIn('right').map(([name, text]) => ({ name, text, found: shownOf(text, days.right) }));

  it('get neither error nor warning', () => {
    const loud = notes.filter(({ found }) => found.some(isLoud));
    console.log(`      silent: ${share(notes.length - loud.length, notes.length)}`);
    for (const { name, text, found } of loud)
      for (const one of found.filter(isLoud)) console.log(`      ${lineOf(name, text, one)}`);
    assert.ok(notes.length >= 100);
    assert.ok(notes.length - loud.length >= reached, `${loud.length} right notes get an error or a warning`);
  });

  it('get one information in two notes at most', () => {
    const count = notes
      .flatMap(({ found }) => found)
      .filter(({ severity }) => severity === 'information').length;
    console.log(`      information: ${count} in ${notes.length} notes`);
    assert.ok(count * 2 <= notes.length, String(count));
  });
});

describe('lean notes', () => {
  for (const [name, text] of notesIn('lean'))
    it(`${name} gets two informations at most`, () => {
      const found = shownOf(text, days.lean).filter((one) => !isLoud(one));
      assert.ok(found.length <= 2, found.map((one) => lineOf(name, text, one)).join('\n'));
    });
});
