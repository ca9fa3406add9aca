import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

export const title = 'opens a sample, sees that the dose is too high, and corrects the volume';

const file = 'first.wheal.yaml';

export async function scene(person, samples) {
  await person.quickOpen(file);
  await person.seesSquiggles(1);
  await person.seesProblems(/Errors: 1/);
  await person.picture('over-limit-1-squiggle');

  const before = readFileSync(join(samples, file), 'utf8');
  await person.press('Control+End', 'ArrowUp', 'End', 'ArrowLeft');
  await person.press(...Array.from('20 mL', () => 'Backspace'));
  await person.type('5 mL');
  await person.seesSquiggles(0);
  await person.seesProblems(/No Problems|^Warnings/);
  await person.picture('over-limit-2-corrected');

  await person.save();
  const at = before.lastIndexOf('20 mL');
  assert.equal(
    readFileSync(join(samples, file), 'utf8'),
    `${before.slice(0, at)}5 mL${before.slice(at + 5)}`,
  );
}
