import { parseArgs } from 'node:util';
import { parts, smallest } from './parts.ts';
import { Random } from './random.ts';

/** `npm run campaign -- --seed N --count N [--part NAME]`: tries so often in each part, and prints the smallest text of each failure. */
const { values } = parseArgs({
  options: {
    seed: { type: 'string', default: '1' },
    count: { type: 'string', default: '1000' },
    part: { type: 'string' },
  },
});
const count = Number(values.count);
let failed = 0;
for (const [name, { tried }] of Object.entries(parts)) {
  if (values.part !== undefined && values.part !== name) continue;
  const random = new Random(Number(values.seed));
  let own = 0;
  for (let left = count; left > 0; left--) {
    const failure = tried(random);
    if (failure === undefined) continue;
    own += 1;
    if (own <= 5) console.log(`${name}: ${failure.what}\n${JSON.stringify(smallest(failure))}\n`);
  }
  console.log(`${name}: ${count} tried, ${own} failed`);
  failed += own;
}
process.exitCode = failed > 0 ? 1 : 0;
