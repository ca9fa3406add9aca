import { until } from './person.mjs';

/** Asks for something until it shows: it may not all be there yet. */
const shown = (what, ask) =>
  until('an answer', async () => {
    await ask();
    return what
      .first()
      .waitFor({ timeout: 5000 })
      .then(
        () => true,
        () => false,
      );
  });

export const title = 'sees what the pictures of the guide show: a list of days, a dose step by step, fixes';

export async function scene(person) {
  const { page } = person;
  await page.setViewportSize({ width: 1000, height: 620 });
  await person.press('Control+b');
  await page.locator('.sidebar').waitFor({ state: 'hidden' });

  await person.quickOpen('over-the-limit.wheal.yaml');
  await person.seesErrors(1);
  await person.goTo('volume: 20 mL');
  await person.press('ArrowRight', 'ArrowLeft');
  await shown(page.locator('.monaco-hover', { hasText: 'of the limit' }), () =>
    person.press('Control+k', 'Control+i'),
  );
  await person.picture('guide-1-dose');
  await person.press('Escape');

  await person.quickOpen('icd-electrosurgery.wheal.yaml');
  await person.seesErrors(2);
  await person.goTo('electrosurgery, ');
  await person.press('ArrowLeft');
  await shown(page.locator('.action-widget .monaco-list-row.action', { hasText: 'orrect the record' }), () =>
    person.press('Control+.'),
  );
  await person.picture('guide-2-fixes');
  await person.press('Escape');

  await person.quickOpen('punch-sutured.wheal.yaml');
  await person.goTo('sutures-due: 2026-03-18');
  await person.type('sutures-due: ');
  await page.locator('.suggest-widget.visible .monaco-list-row', { hasText: 'Wednesday' }).first().waitFor();
  await person.picture('guide-3-days');
}
