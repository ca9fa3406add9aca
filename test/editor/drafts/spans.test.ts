import assert from 'node:assert/strict';
import fc from 'fast-check';
import type { Span } from '../../../src/draft/draft.ts';
import { movedBy } from '../../../src/editor/drafts/spans.ts';

describe('a span of a text that is edited', () => {
  const span = { from: 10, to: 15 };

  it('stays where the change is behind it, and moves with what is before it', () => {
    assert.deepEqual(movedBy(span, [{ rangeOffset: 15, rangeLength: 0, text: 'x' }]), span);
    assert.deepEqual(movedBy(span, [{ rangeOffset: 2, rangeLength: 3, text: 'x' }]), { from: 8, to: 13 });
    assert.deepEqual(movedBy(span, [{ rangeOffset: 10, rangeLength: 0, text: 'ab' }]), { from: 12, to: 17 });
  });

  it('is none any more where its own words were changed', () => {
    assert.equal(movedBy(span, [{ rangeOffset: 12, rangeLength: 0, text: 'x' }]), undefined);
    assert.equal(movedBy(span, [{ rangeOffset: 8, rangeLength: 3, text: '' }]), undefined);
  });

  it('names the same words after any change, or none', () => {
    const texts = fc.string({ minLength: 4, maxLength: 40 });
    fc.assert(
      fc.property(
        texts,
        fc.nat(),
        fc.nat(),
        fc.nat(),
        fc.nat(),
        fc.string({ maxLength: 5 }),
        (text, a, b, c, d, put) => {
          const [from = 0, to = 0] = [a % text.length, b % text.length].sort((one, other) => one - other);
          const [start = 0, end = 0] = [c % text.length, d % text.length].sort((one, other) => one - other);
          if (from === to) return;
          const after: Span | undefined = movedBy({ from, to }, [
            { rangeOffset: start, rangeLength: end - start, text: put },
          ]);
          const edited = text.slice(0, start) + put + text.slice(end);
          if (after !== undefined) assert.equal(edited.slice(after.from, after.to), text.slice(from, to));
        },
      ),
    );
  });
});
