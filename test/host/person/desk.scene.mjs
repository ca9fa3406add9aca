import assert from 'node:assert/strict';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { until } from './person.mjs';

export const title = 'asks for a dose, accepts a finding, reads the status, and exports the summary';

const file = 'over-limit.wheal.yaml';

export async function scene(person, folder) {
  await person.quickOpen(file);
  await person.seesErrors(1);
  await saysHowTheNoteStands(person);
  await asksForADose(person);
  await acceptsAFinding(person, folder);
  await exportsTheSummary(person, folder);
}

async function saysHowTheNoteStands({ page }) {
  const status = page.locator('[id="status.languageStatus"]');
  const spoken = await until(
    'the status',
    () => status.locator('[aria-label]').first().getAttribute('aria-label'),
    (text) => text !== null && text.includes('limit'),
  );
  assert.match(spoken, /dose is 125\.4 percent of its limit/);
  assert.match(spoken, /1 error/);
  await status.hover();
  const shown = page.locator('.hover-language-status', { hasText: '125.4% of limit' });
  await shown.waitFor();
  assert.match(await shown.innerText(), /125\.4% of limit · \d+ open/);
}

async function asksForADose(person) {
  const { page } = person;
  // The dose that is there goes; the next question is how much may be given.
  await person.goTo('    anesthetic:');
  for (let row = 0; row < 4; row += 1) await person.press('Control+Shift+k');
  await person.press('Control+Home');
  await person.command('Wheal: Dose Before the Needle…');
  await person.pick('lido 1% epi');
  await person.answer(/^62 kg$/);
  await person.answer(/^64 years$/);
  const dialog = page.locator('.monaco-dialog-box');
  await dialog.waitFor();
  assert.match(
    await dialog.innerText(),
    /lidocaine 1% with epinephrine 1:100,000: at most 43\.4 mL \(434 mg\)/,
  );
  await person.picture('desk-1-dose');
  await person.press('Enter');
  await dialog.waitFor({ state: 'hidden' });
  await until(
    'the entry',
    async () => (await person.rows()).join('\n'),
    (text) => /anesthetic:\n +- product: lido 1% epi\n +volume: \?\?/.test(text),
  );
  // The gap is selected, so that the volume can be typed over it.
  await until(
    'the gap',
    () => person.place(),
    (place) => place.includes('(2 selected)'),
  );
  await person.type('40 mL');
  await person.press('ArrowUp');
}

async function acceptsAFinding(person, folder) {
  await person.goTo('40 mL');
  await until('the finding', () => person.squiggles('warning'));
  await person.command('Wheal: Accept a Finding…');
  // Near the limit is one thing, so much epinephrine another.
  await person.pick('dose/near-limit');
  await person.answer(/^$/, 'given slowly over an hour');
  await person.answer(/^$/, 'K.O.');
  await person.save();
  const text = readFileSync(join(folder, file), 'utf8');
  assert.match(text, /accepted:/);
  assert.match(text, /check: dose\/near-limit/);
  assert.match(text, /reason: "given slowly over an hour"/);
  await person.picture('desk-2-accepted');
}

async function exportsTheSummary(person, folder) {
  const { page } = person;
  const written = join(folder, 'over-limit.summary.txt');
  const begin = async () => {
    await person.command('Wheal: Export the Chart Summary…');
    await person.proposed('over-limit.summary.txt');
  };
  await begin();
  await person.press('Escape');
  await person.noQuestion();
  assert.equal(existsSync(written), false, 'written although nobody said where');

  await begin();
  await person.press('Enter');
  await until('the file', () => existsSync(written) && readFileSync(written, 'utf8').length > 0);
  assert.match(readFileSync(written, 'utf8'), /given slowly over an hour/);

  const before = 'what somebody else has written\n';
  writeFileSync(written, before);
  await begin();
  await person.press('Enter');
  await page.locator('.quick-input-widget', { hasText: 'already exists' }).waitFor();
  await person.picture('desk-3-asks');
  await person.press('Escape'); // back to the question where
  await page.locator('.quick-input-widget', { hasText: 'already exists' }).waitFor({ state: 'hidden' });
  await person.press('Escape');
  await person.noQuestion();
  assert.equal(readFileSync(written, 'utf8'), before);
}
