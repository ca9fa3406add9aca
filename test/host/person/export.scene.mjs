import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../../../src/build/setup.mjs';

export const title = 'exports the handout and what falls due, and replaces no file unasked';

const note = 'punch-sutured.wheal.yaml';
/** Some of what fell due is done, one thing is not. */
const unfinished = 'result-not-told.wheal.yaml';
const before = 'what somebody else has written\n';

export async function scene(person, folder) {
  await person.quickOpen(note);
  await exportsTheHandout(person, folder);
  await exportsItInSpanish(person, folder);
  await exportsTheCalendar(person, folder);
}

/** Leaves the dialog, then takes what it proposes: a page that is the same as the command line writes. */
async function exportsTheHandout(person, folder) {
  const written = join(folder, 'punch-sutured.handout-en.html');
  await asksForTheHandout(person, 'English', 'Page for printing');
  await person.proposed('punch-sutured.handout-en.html');
  await person.picture('export-1-handout');
  await person.press('Escape');
  await person.noQuestion();
  assert.equal(existsSync(written), false, 'written although nobody said where');

  await asksForTheHandout(person, 'English', 'Page for printing');
  await person.proposed('punch-sutured.handout-en.html');
  await person.press('Enter');
  await isWritten(person, written, 'The patient handout is written.', 'export-2-handout-written');
  assert.equal(readFileSync(written, 'utf8'), wheal('handout', join(folder, note), '--format', 'html'));
}

/** Gives another name, which somebody else's file has: that file stays until it is said that it may go. */
async function exportsItInSpanish(person, folder) {
  const written = join(folder, 'para-llevar.txt');
  writeFileSync(written, before);
  const asks = async () => {
    await asksForTheHandout(person, 'Spanish', 'Text');
    await person.proposed('punch-sutured.handout-es.txt');
    await person.type('para-llevar'); // over what is selected: the name without its ending
    await person.proposed('para-llevar.txt');
    await person.press('Enter');
  };
  await asks();
  await keepsWhatIsThere(person, written, 'export-3-handout-asks');

  await asks();
  await replacesWhatIsThere(person);
  await isWritten(person, written, 'The patient handout is written.', 'export-4-handout-replaced');
  const spanish = wheal('handout', join(folder, note), '--format', 'text', '--language', 'es');
  assert.equal(readFileSync(written, 'utf8'), spanish);
}

async function exportsTheCalendar(person, folder) {
  const written = join(folder, 'result-not-told.due.ics');
  await person.quickOpen(unfinished);
  const asks = async () => {
    await person.command('Wheal: Export Due Dates as a Calendar…');
    await person.proposed('result-not-told.due.ics');
  };
  await asks();
  await person.picture('export-5-calendar');
  await person.press('Escape');
  await person.noQuestion();
  assert.equal(existsSync(written), false, 'written although nobody said where');

  writeFileSync(written, before);
  await asks();
  await person.press('Enter');
  await keepsWhatIsThere(person, written, 'export-6-calendar-asks');

  await asks();
  await person.press('Enter');
  await replacesWhatIsThere(person);
  await isWritten(person, written, 'The calendar is written.', 'export-7-calendar-replaced');
  const calendar = unstamped(readFileSync(written, 'utf8'));
  assert.equal(calendar, unstamped(wheal('schedule', join(folder, unfinished), '--format', 'ics')));
  assert.match(calendar, /STATUS:CONFIRMED/);
  // Nothing of ours was in the file that is replaced, so there is nothing to cancel.
  assert.doesNotMatch(calendar, /STATUS:CANCELLED/);
}

async function asksForTheHandout(person, language, form) {
  await person.command('Wheal: Patient Handout…');
  await person.pick(language);
  await person.pick(form);
}

/** Answers the question whether a file may be replaced with going back to the question where, and leaves. */
async function keepsWhatIsThere(person, written, picture) {
  const question = person.page.locator('.quick-input-widget', { hasText: 'already exists' });
  await question.waitFor();
  await person.picture(picture);
  await person.press('Escape');
  await question.waitFor({ state: 'hidden' });
  await person.press('Escape');
  await person.noQuestion();
  assert.equal(readFileSync(written, 'utf8'), before);
}

async function replacesWhatIsThere(person) {
  await person.page.locator('.quick-input-widget', { hasText: 'already exists' }).waitFor();
  await person.press('Enter');
  await person.noQuestion();
}

/** Waits until it is said that the file is there. */
async function isWritten(person, written, words, picture) {
  const said = person.page.locator('.notifications-toasts .notification-list-item', { hasText: words });
  await said.waitFor();
  assert.ok(existsSync(written), `${written} is not there`);
  await person.picture(picture);
  await person.press('Escape');
  await said.waitFor({ state: 'hidden' });
}

/** What the command line writes. */
const wheal = (...given) =>
  execFileSync(process.execPath, [join(root, 'dist', 'wheal.cjs'), ...given], { encoding: 'utf8' });

/** A calendar without the moment at which it was written. */
const unstamped = (calendar) => calendar.replace(/^(DTSTAMP|LAST-MODIFIED|SEQUENCE):.*$/gm, '$1');
