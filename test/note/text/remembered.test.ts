import assert from 'node:assert/strict';
import { remembered } from '../../../src/note/text/remembered.ts';

describe('a reading that is kept by its text', () => {
  it('reads a short text once, also where the answer is undefined', () => {
    let times = 0;
    const read = remembered((text) => {
      times += 1;
      return text === 'left arm' ? undefined : text.length;
    });
    assert.equal(read('left arm'), undefined);
    assert.equal(read('left arm'), undefined);
    assert.equal(times, 1);
    assert.equal(read('chin'), 4);
    assert.equal(read('chin'), 4);
    assert.equal(times, 2);
  });

  it('keeps no long text, and answers right after more texts than it keeps', () => {
    let times = 0;
    const read = remembered((text) => {
      times += 1;
      return text.toUpperCase();
    });
    const long = 'a'.repeat(500);
    read(long);
    read(long);
    assert.equal(times, 2);
    for (let at = 0; at < 5000; at += 1) assert.equal(read(`text ${at}`), `TEXT ${at}`);
    assert.equal(read('text 1'), 'TEXT 1');
  });
});
