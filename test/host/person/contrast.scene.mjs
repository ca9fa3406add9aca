import assert from 'node:assert/strict';

export const title = 'in high contrast findings, hints and lenses can be told apart';

export const settings = { 'workbench.colorTheme': 'Default High Contrast' };

export async function scene(person) {
  const { page } = person;
  await page.locator('.monaco-workbench.hc-black').waitFor();
  await person.quickOpen('over-the-limit.wheal.yaml');
  await person.seesErrors(1);
  await person.seesSquiggles(1);
  await page.locator('.codelens-decoration', { hasText: 'of the limit' }).first().waitFor();
  const background = await person
    .editor()
    .locator('.monaco-editor-background')
    .first()
    .evaluate((one) => globalThis.getComputedStyle(one).backgroundColor);
  assert.equal(background, 'rgb(0, 0, 0)');
  await person.picture('contrast');
}
