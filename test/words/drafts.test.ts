import assert from 'node:assert/strict';
import { judged, textsOf } from '../draft/measure.ts';

/** Shares that are held; what falls short is printed with WHEAL_DRAFTS=1. */
const goals = { invented: 0, right: 0.99, placed: 0.9 };

describe('drafts of texts that somebody else wrote, with the facts in them', () => {
  it('invents nothing, and places and reads most', () => {
    const all = textsOf('test/fixtures/unseen/drafts.yaml').map((text) => judged(text));
    const sum = (count: (one: (typeof all)[number]) => number): number =>
      all.reduce((total, one) => total + count(one), 0);
    const [asked, placed] = [sum((one) => one.asked), sum((one) => one.placed)];
    const [invented, wrong, right] = [
      sum((one) => one.invented.length),
      sum((one) => one.wrong.length),
      sum((one) => one.right),
    ];
    console.log(
      `      placed ${placed} of ${asked}; right ${right} of ${right + wrong + invented}; invented ${invented}`,
    );
    if (process.env['WHEAL_DRAFTS'] !== undefined)
      for (const { id, invented: made, wrong: bad, missed } of all)
        for (const [kind, lines] of Object.entries({ invented: made, wrong: bad, missed }))
          for (const line of lines) console.log(`${kind}\t${id}\t${line}`);
    assert.ok(invented <= goals.invented);
    assert.ok(right >= goals.right * (right + wrong + invented));
    assert.ok(placed >= goals.placed * asked);
  });
});
