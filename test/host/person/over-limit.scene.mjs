import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

export const title = 'opens a note, sees that the dose is too high, and corrects the volume';

const file = 'over-limit.wheal.yaml';

export async function scene(person, folder) {
  const before = readFileSync(join(folder, file), 'utf8');

  await person.quickOpen(file);
  await person.seesSquiggles(1);
  await person.seesErrors(1);
  await person.page.locator('.codelens-decoration', { hasText: '0 mL left' }).waitFor();
  await person.picture('over-limit-1-squiggle');

  await person.goTo('35 mL'); // which selects it
  await person.type('5 mL');
  await person.seesSquiggles(0);
  await person.seesErrors(0);
  assert.ok((await person.rows()).some((row) => row.startsWith('        volume: 5 mL')));
  await person.picture('over-limit-2-corrected');

  await person.save();
  assert.equal(readFileSync(join(folder, file), 'utf8'), before.replace('35 mL', '5 mL'));
}
