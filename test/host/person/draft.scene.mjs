import assert from 'node:assert/strict';
import { until } from './person.mjs';

export const title =
  'makes a draft note of spoken words, sees which words say what, and writes what is missing';

/** Invented, as it was spoken. */
const spoken =
  'Chart 20471, 62 kilograms, no known drug allergies, no pacemaker, written consent. ' +
  'Left cheek, brown papule, rule out nevus. Isopropyl alcohol, one percent lidocaine plain, one ml. ' +
  'Four millimeter punch, two simple interrupted five oh nylon. Specimen A in formalin for routine histology. ' +
  'Petrolatum and a bandage, no complications.';
const most = 45;

export async function scene(person) {
  const { page } = person;
  await page.setViewportSize({ width: 1500, height: 950 });
  await person.press('Control+n');
  await page.locator('.tab.active', { hasText: 'Untitled' }).waitFor();
  await page.locator('.editor-group-container.active .monaco-editor.focused').waitFor();
  await page.keyboard.insertText(spoken);
  const before = person.keys;
  await person.press('Control+a');
  await person.command('Wheal: Draft a Note from Text');
  const note = page.locator('.editor-group-container.active .view-lines');
  await until(
    'the draft',
    () => note.innerText(),
    (text) => /draft/.test(text) && /punch/.test(text),
  );
  await person.picture('draft-1-side-by-side');
  const keys = person.keys - before;
  console.log(`     from spoken words to the draft with ${keys} keys`);
  assert.ok(keys <= most, `${keys} keys`);
  const rows = (await person.rows()).join('\n');
  for (const row of ['allergies: none', 'site: left cheek', 'size: 4 mm', 'volume: 1 mL', 'count: 2'])
    assert.ok(rows.toLowerCase().includes(row.toLowerCase()), `${row} is not in\n${rows}`);
  await person.goTo('volume: 1 mL');
  await person.press('ArrowRight');
  await page.locator('.editor-group-container:not(.active) .view-overlays [class*="ced-"]').first().waitFor();
  await person.picture('draft-2-marked');
}
