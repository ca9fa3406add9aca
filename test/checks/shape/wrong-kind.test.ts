import assert from 'node:assert/strict';
import { messageOf } from '../../../src/checks/index.ts';
import { flags } from '../tester.ts';
import { before } from './_shape.ts';

describe('a value of the wrong kind', () => {
  for (const [line, message] of [
    ['    ⟦lesion⟧: [a, b]', /takes a text; here it has a list/],
    ['    ⟦lesion⟧: {a: b}', /takes a text; here it has a map/],
    ['    accepted: ⟦yes⟧', /takes a map or a list; here it has a text/],
    ['    dressing: [⟦[a]⟧]', /takes a text/],
  ] as const)
    it(`is found in ${line.trim()}`, () => {
      const [finding] = flags('shape/wrong-kind', `${before}${line}\n`);
      assert.match(messageOf(finding!), message);
    });
});
