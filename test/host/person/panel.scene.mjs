import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { until } from './person.mjs';

export const title = 'sees dose, place and time beside the note, and goes from a mark to its line';

const file = 'over-limit.wheal.yaml';

export async function scene(person, folder) {
  const { page } = person;
  const lines = readFileSync(join(folder, file), 'utf8').split('\n');
  const seesCaretAt = (word) => {
    const line = lines.findIndex((one) => one.includes(word)) + 1;
    return until(
      `the caret on line ${line}`,
      () => person.place(),
      (place) => place.startsWith(`Ln ${line},`),
    );
  };
  await page.setViewportSize({ width: 1500, height: 950 });
  await person.quickOpen(file);
  await person.command('Wheal: Show Dose, Place, Time and Summary Beside the Note');
  const beside = page
    .frameLocator('iframe.webview.ready')
    .frameLocator('iframe#active-frame')
    .locator('body');
  await beside.locator('.wheal-over').first().waitFor();
  await person.picture('panel-1-over');

  await person.press('Control+1');
  await page.locator('.editor-group-container.active .monaco-editor.focused').waitFor();
  await person.goTo('35 mL'); // which selects it
  await person.type('20 mL');
  await beside.locator('.wheal-bar').first().waitFor();
  await beside.locator('.wheal-over').waitFor({ state: 'detached' });
  await person.picture('panel-2-below');
  await person.goTo('20 mL');
  await person.type('35 mL');
  await beside.locator('.wheal-over').first().waitFor();

  // With the mouse: a finding, and then a mark of a picture.
  await person.goTo('visit');
  await beside
    .getByRole('button', { name: /Error, line/ })
    .first()
    .click();
  await seesCaretAt('volume: 35 mL');
  await person.goTo('visit');
  await beside.locator('#dose [data-start]').first().click();
  await seesCaretAt('volume: 35 mL');

  // With a key: a mark of the figure that has the focus.
  await person.goTo('visit');
  await beside.locator('#place [data-start]').first().press('Enter');
  await seesCaretAt('site: left upper back');
  await person.command('Wheal: Show the Patient Handout Beside the Note');
  await beside.getByRole('heading', { name: 'Care at home' }).waitFor();
  await person.picture('panel-3-handout');
  assert.equal(await beside.locator('button[aria-pressed="true"]').innerText(), 'Patient handout');
}
