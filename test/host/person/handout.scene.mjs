export const title = 'sees the patient handout beside the note, and it follows what is typed';

const file = 'punch-sutured.wheal.yaml';

export async function scene(person) {
  const { page } = person;
  await person.quickOpen(file);
  await person.goTo('technique: simple');
  await person.command('Wheal: Show the Patient Handout Beside the Note');
  const beside = page
    .frameLocator('iframe.webview.ready')
    .frameLocator('iframe#active-frame')
    .locator('body');
  await beside.getByRole('heading', { name: 'Caring for the wound' }).waitFor();
  await person.picture('handout-1-beside');
  await person.press('Control+1');
  // Keys that come before the note has the focus go nowhere.
  await page.locator('.editor-group-container.active .monaco-editor.focused').waitFor();
  await person.press('ArrowDown', 'End', 'Backspace');
  await person.type('3');
  await beside.getByText('closed with 3 stitches').waitFor();
}
