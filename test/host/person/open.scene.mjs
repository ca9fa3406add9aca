import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { until } from './person.mjs';

export const title =
  'sees who has not been told, opens the note from the list, and writes that the patient was told';

const file = 'result-not-told.wheal.yaml';

export async function scene(person, folder) {
  const before = readFileSync(join(folder, file), 'utf8');
  const rows = person.page.locator('.tree-explorer-viewlet-tree-view .monaco-list-row');
  const row = rows.filter({ hasText: 'X-20607' }).first();

  await person.command('Wheal: Show Open Items');
  await row.waitFor();
  await person.picture('open-1-list');
  assert.match(await row.innerText(), /X-20607.*cannot wait, \d+ days overdue; specimen A/s);
  assert.match((await row.getAttribute('aria-label')) ?? '', /Patients to be told/);

  // With the keys alone: to the item, and into its note at its row.
  await goTo(person, 'X-20607');
  await person.press('Enter');
  await person.editor(file).locator('.view-line').first().waitFor();
  await until(
    'the row of the result',
    () => person.rows(),
    (shown) => shown.some((text) => text.includes('received: 2026-03-24')),
  );
  await person.picture('open-2-note');

  await person.command('Wheal: Show Open Items');
  await goTo(person, 'X-20607');
  await person.press('Control+Enter');
  await choose(person, 'today');
  await choose(person, 'telephone', 'open-3-how');
  await answer(person, 'N.B.');
  const told = /^ {10}told: \{on: \d{4}-\d\d-\d\d, by: N\.B\., how: telephone\}$/;
  await until(
    'the row that says so',
    () => person.rows(),
    (shown) => shown.some((text) => told.test(text)),
  );
  await person.picture('open-4-told');

  // The list has followed: now a plan is wanted, of the same patient.
  await row.filter({ hasText: 'cannot wait' }).waitFor({ state: 'detached' });
  await person.command('Wheal: Show Open Items');
  await goTo(person, 'X-20607');
  assert.match(
    (await focused(person).getAttribute('aria-label')) ?? '',
    /plan what happens next.*Next steps/s,
  );
  await person.picture('open-5-next');
  await person.press('Enter');
  await person.page.locator('.tab.active', { hasText: file }).waitFor();
  assert.equal(readFileSync(join(folder, file), 'utf8'), before, 'it was saved by itself');
  await person.save();
  const after = readFileSync(join(folder, file), 'utf8').split('\n');
  assert.deepEqual(
    after.filter((text) => !told.test(text)),
    before.split('\n'),
  );
  assert.equal(after.length, before.split('\n').length + 1);
}

const focused = (person) => person.page.locator('.tree-explorer-viewlet-tree-view .monaco-list-row.focused');

/** Goes down the list to a row. */
async function goTo(person, text) {
  await person.press('Home');
  for (let step = 0; step < 40; step += 1) {
    const here = focused(person);
    if ((await here.count()) > 0 && (await here.innerText()).includes(text)) return;
    await person.press('ArrowDown');
  }
  throw new Error(`no row says ${text}`);
}

/** Takes the first answer that is offered, which has to be this one. */
async function choose(person, text, picture) {
  await person.page.locator('.quick-input-list .monaco-list-row.focused', { hasText: text }).waitFor();
  if (picture !== undefined) await person.picture(picture);
  await person.press('Enter');
}

/** Types an answer. */
async function answer(person, text) {
  await person.page.locator('.quick-input-message', { hasText: 'Left empty' }).waitFor();
  await person.type(text);
  await person.press('Enter');
}
