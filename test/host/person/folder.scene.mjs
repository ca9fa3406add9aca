import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

export const title = 'checks a whole folder, sees how far it is, and stops it';

const many = 3000;

/** A folder with many notes. */
export function place(folder) {
  const note = readFileSync(join(folder, 'over-limit.wheal.yaml'), 'utf8');
  const whole = join(folder, 'many');
  mkdirSync(whole);
  for (let number = 0; number < many; number += 1)
    writeFileSync(join(whole, `note-${number}.wheal.yaml`), note.replace('C-1', `C-${number}`));
  return whole;
}

export async function scene(person) {
  const toast = (words) =>
    person.page.locator('.notifications-toasts .notification-list-item', { hasText: words });
  await person.command('Wheal: Check All Notes of the Folder');
  await toast(/Checking notes: note-\d+\.wheal\.yaml/).waitFor();
  await person.picture('folder-1-checking');
  await toast('Checking notes').locator('.monaco-button', { hasText: 'Cancel' }).focus();
  await person.press('Enter');
  await toast(/Stopped\. So far [1-9]\d* notes?: [1-9]\d* errors?/).waitFor();
  await person.picture('folder-2-stopped');
}
