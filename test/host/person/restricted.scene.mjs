import assert from 'node:assert/strict';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

export const title =
  'in restricted mode a note is checked, and its practice file loosens nothing until it is trusted';

export const settings = {
  'security.workspace.trust.enabled': true,
  'security.workspace.trust.startupPrompt': 'never',
};

/** Invented. 310 mg at 62 kg: more than the 279 mg of the label, less than the 372 mg that the practice allows. */
const practice = `wheal: 1
name: Example Dermatology
limits:
  - {agent: lidocaine, max-mg-per-kg: 6, max-mg: 400, approved: {by: K.O., on: 2026-01-05, reason: invented}}
`;

export async function scene(person, folder) {
  const note = readFileSync(join(folder, 'over-limit.wheal.yaml'), 'utf8').replace('35 mL', '31 mL');
  mkdirSync(join(folder, 'looser'));
  writeFileSync(join(folder, 'looser', 'practice.wheal.yaml'), practice);
  writeFileSync(join(folder, 'looser', 'between.wheal.yaml'), note);
  const { page } = person;
  await page.locator('.statusbar-item', { hasText: 'Restricted Mode' }).waitFor();
  await person.quickOpen('between.wheal.yaml');
  await person.seesErrors(1);
  await person.picture('restricted-1-checked');

  await person.command('Workspaces: Manage Workspace Trust');
  await page.locator('.workspace-trust-editor').waitFor();
  await person.press('Control+Enter');
  await page.locator('.statusbar-item', { hasText: 'Restricted Mode' }).waitFor({ state: 'hidden' });
  await person.press('Escape');
  await page.locator('.workspace-trust-editor').waitFor({ state: 'hidden' });
  await person.seesErrors(0);
  assert.equal(await person.squiggles('error'), 0);
}
