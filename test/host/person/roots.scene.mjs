import assert from 'node:assert/strict';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

export const title = 'in a window with two folders each note is judged by the practice file of its own';

/** Invented. 200 mg: in order by the label, too much where the practice allows 100 mg. */
const limits = { strict: 'limits:\n  - {agent: lidocaine, max-mg: 100}\n', plain: '' };

/** What the window is opened on. */
export function place(folder) {
  const note = readFileSync(join(folder, 'over-limit.wheal.yaml'), 'utf8').replace('35 mL', '20 mL');
  for (const [name, more] of Object.entries(limits)) {
    mkdirSync(join(folder, name));
    writeFileSync(join(folder, name, 'practice.wheal.yaml'), `wheal: 1\nname: Example ${name}\n${more}`);
    writeFileSync(join(folder, name, `in-${name}.wheal.yaml`), note);
  }
  const file = join(folder, 'both.code-workspace');
  writeFileSync(file, JSON.stringify({ folders: Object.keys(limits).map((path) => ({ path })) }));
  return file;
}

export async function scene(person) {
  await person.quickOpen('in-plain.wheal.yaml');
  await person.seesSquiggles(0);
  await person.quickOpen('in-strict.wheal.yaml');
  await person.seesSquiggles(1);
  await person.quickOpen('in-plain.wheal.yaml');
  assert.equal(await person.squiggles('error'), 0);
  await person.seesErrors(1);
}
