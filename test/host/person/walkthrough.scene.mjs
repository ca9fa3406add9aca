import assert from 'node:assert/strict';
import { until } from './person.mjs';

export const title =
  'goes through the first minute in the dark: five steps, a sample note, its findings, the help';

export const settings = { 'workbench.colorTheme': 'Default Dark Modern' };

const titles = [
  'Open a sample note',
  'See what is wrong, and why',
  'Fix it with one key',
  'Write a note',
  'Use the summary',
];

export async function scene(person) {
  const { page } = person;
  await page.locator('.monaco-workbench.vs-dark').waitFor();
  // In a narrow window the steps are without their pictures.
  await page.setViewportSize({ width: 1600, height: 900 });
  await person.press('Control+b');
  await open(person);
  const steps = page.locator('.gettingStartedContainer .getting-started-step');
  const shown = await until(
    'five steps',
    () => steps.locator('.step-title').allInnerTexts(),
    ({ length }) => length === titles.length,
  );
  assert.deepEqual(
    shown.map((text) => text.trim()),
    titles,
  );
  await page
    .frameLocator('.getting-started-media iframe.webview.ready')
    .frameLocator('iframe#active-frame')
    .locator('svg text')
    .first()
    .waitFor();
  await person.picture('walkthrough-1-steps');

  const button = page.locator('.gettingStartedContainer .monaco-button', { hasText: 'Open the sample note' });
  await button.focus();
  await person.press('Enter');
  await person.seesErrors(2);
  await page.locator('.codelens-decoration', { hasText: 'of the limit' }).first().waitFor();
  await person.picture('walkthrough-2-sample');

  await person.press('F8');
  await page.locator('.marker-widget', { hasText: 'the limit' }).waitFor();
  await person.picture('walkthrough-3-finding');
  await person.press('Escape');

  await open(person);
  await steps.locator('.codicon-getting-started-step-checked').nth(1).waitFor();

  await person.command('Wheal: Help for the First Minute');
  await page
    .frameLocator('iframe.webview.ready')
    .frameLocator('iframe#active-frame')
    .getByRole('heading', { name: 'With the keyboard alone' })
    .waitFor();
  await person.picture('walkthrough-4-help');
}

async function open(person) {
  await person.command('Welcome: Open Walkthrough...');
  await person.pick('The first minute with Wheal');
}
