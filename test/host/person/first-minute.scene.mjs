import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { until } from './person.mjs';

export const title = 'mends a word with the fix key, accepts a completion, and copies the summary';

const file = 'misspelt.wheal.yaml';

export async function scene(person, folder) {
  const before = readFileSync(join(folder, file), 'utf8');
  const text = async () => (await person.rows()).join('\n');

  await person.quickOpen(file);
  await until('a warning', () => person.squiggles('warning'));
  await person.goTo('presure');
  await person.fix('Change to pressure');
  await until('the word to be right', text, (rows) => rows.includes('hemostasis: pressure'));
  await person.picture('first-minute-1-mended');

  // The colors tell a quantity from a word, and both from a key.
  const colors = await person
    .editor()
    .locator('.view-lines span span')
    .evaluateAll((spans) =>
      Object.fromEntries(
        spans.map((one) => [one.textContent.trim(), globalThis.getComputedStyle(one).color]),
      ),
    );
  assert.equal(colors['K.O.'], colors['lidocaine']);
  assert.equal(new Set(['K.O.', 'clinician', '1'].map((word) => colors[word])).size, 3);

  await person.press('End', 'Enter');
  await person.type('comp');
  await person.complete('complications');
  await person.type('none');
  await until('the row', text, (rows) => rows.includes('    complications: none'));
  await person.picture('first-minute-2-completed');
  await person.save();
  const expected = before.replace('presure\n', 'pressure\n    complications: none\n');
  assert.equal(readFileSync(join(folder, file), 'utf8'), expected);

  await person.command('Wheal: Copy the Chart Summary');
  const summary = await until('the summary', () => person.clipboard());
  assert.match(summary, /left upper back/i);
  assert.match(summary, /5 mg/);
}
