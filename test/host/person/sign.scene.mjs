import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { until } from './person.mjs';

export const title = 'is shown what is open before signing, signs a note, and finds what was changed later';

const file = 'punch-sutured.wheal.yaml';

export async function scene(person, folder) {
  const dialog = person.page.locator('.monaco-dialog-box');
  await person.quickOpen('misspelt.wheal.yaml');
  await until('a warning', () => person.squiggles('warning'));
  await person.command('Wheal: Sign the Note');
  await dialog.waitFor();
  await person.picture('sign-1-before');
  assert.match(await dialog.innerText(), /Before signing: 2 warnings, \d+ worth a look/);
  await person.press('Escape');
  await dialog.waitFor({ state: 'detached' });

  const before = readFileSync(join(folder, file), 'utf8');
  await person.quickOpen(file);
  await ask(person, 'Wheal: Sign the Note');
  await person.page.locator('.quick-input-message', { hasText: 'not identity' }).waitFor();
  await person.picture('sign-2-who');
  await person.type('K.O.');
  await person.press('Enter');
  await until(
    'the signature',
    () => person.rows(),
    (rows) => rows.some((row) => row.startsWith('signed:')),
  );
  const said = person.page.locator('.notifications-toasts .notification-list-item', {
    hasText: 'not who signed',
  });
  await said.waitFor();
  await person.picture('sign-3-signed');
  await person.press('Escape');
  await said.waitFor({ state: 'hidden' });
  await person.save();
  const signed = readFileSync(join(folder, file), 'utf8');
  assert.ok(signed.startsWith(`${before}signed:\n  format: 2\n  by: "K.O."\n`), signed.slice(before.length));

  await person.goTo('volume: 1 mL');
  await person.type('volume: 2 mL');
  await ask(person, 'Wheal: Verify the Signature');
  const change = person.page.locator('.quick-input-list .monaco-list-row.focused');
  await change.filter({ hasText: 'procedure 1: changed' }).waitFor();
  await person.picture('sign-4-changed');
  await person.press('Enter');
  await person.page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
  const row = before.split('\n').findIndex((text) => text.includes('site: right upper arm')) + 1;
  await person.page.locator('[id="status.editor.selection"]', { hasText: `Ln ${row},` }).waitFor();
}

/** Runs a command that asks something at once, in the box in which it was chosen. */
async function ask(person, title) {
  await person.press('F1');
  await person.page.locator('.quick-input-widget input').first().waitFor();
  await person.type(title);
  await person.page.locator('.quick-input-list .monaco-list-row.focused', { hasText: title }).waitFor();
  await person.press('Enter');
}
