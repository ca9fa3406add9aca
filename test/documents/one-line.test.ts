import assert from 'node:assert/strict';
import { plain } from '../../src/documents/one-line.ts';

describe('a text on one line', () => {
  it('keeps the joiners of scripts that are written with them', () => {
    for (const text of ['می\u200cشود', 'क्\u200dष', 'ന്\u200d', 'ක්\u200dෂ', 'ක්\u200dර\u200cx'.slice(0, 4)])
      assert.equal(plain(text), text);
  });

  it('keeps the joiners of emoji', () => {
    for (const text of ['👩\u200d⚕️', '👩🏽\u200d⚕️', '👨\u200d👩\u200d👧', '❤️\u200d🔥', '🏳️\u200d🌈'])
      assert.equal(plain(text), text);
  });

  it('lets no other character through that nobody sees', () => {
    for (const text of [
      'a\u200cb',
      'a\u200db',
      '1\u200d',
      '\u200d',
      '👩\u200d',
      'a\u00adb',
      'a\u061cb',
      'a\u2060b',
      'a\u206fb',
      'a\ufffab',
      'a\u{e0041}b',
      'ا\u200eب',
    ])
      assert.doesNotMatch(plain(text), /\p{Cf}/u, JSON.stringify(text));
  });
});
