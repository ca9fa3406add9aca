// Someone at the keyboard: sees what the page shows, and has no other way in.
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { root } from '../../../src/build/setup.mjs';

const shots = join(root, 'test', 'host', 'shots');
/** Milliseconds; generous, so that a busy machine fails nothing. */
const patience = 60_000;

/** Asks until the answer holds, and answers it. */
export async function until(what, ask, holds = Boolean) {
  const end = Date.now() + patience;
  for (;;) {
    const answer = await ask();
    if (holds(answer)) return answer;
    if (Date.now() > end)
      throw new Error(`waited ${patience / 1000} s for ${what}; last: ${JSON.stringify(answer)}`);
    await setTimeout(50);
  }
}

export class Person {
  /** Keys pressed so far; a chord counts as one. */
  keys = 0;

  constructor(page) {
    this.page = page;
  }

  /** Waits until the workbench is there to be used. */
  async sitDown() {
    await this.page.locator('.monaco-workbench .explorer-folders-view .monaco-list-row').first().waitFor();
    // The extension hosts are up once the status bar shows the count of problems.
    await this.page.locator('[id="status.problems"]').waitFor();
  }

  /** Presses keys or chords, as `Control+s`, one after the other. */
  async press(...keys) {
    for (const key of keys) {
      this.keys += 1;
      await this.page.keyboard.press(key);
    }
  }

  /** Types text as a person does, with a pause after each key, so that suggestions can come. */
  async type(text, { delay = 30 } = {}) {
    this.keys += [...text].length;
    await this.page.keyboard.type(text, { delay });
  }

  /** Opens a file through quick open and stands in its editor. */
  async quickOpen(file) {
    await this.press('Control+p');
    await this.#choose(file, file);
    await this.editor(file).locator('.view-line').first().waitFor();
    await this.page.locator('.tab.active', { hasText: file }).waitFor();
  }

  /** Runs a command by its title, from the command palette. */
  async command(title) {
    await this.press('F1');
    await this.#choose(`>${title}`, title);
  }

  async #choose(text, label) {
    const input = this.page.locator('.quick-input-widget input').first();
    await input.waitFor();
    await this.type(text.replace(/^>/, ''));
    await this.page
      .locator('.quick-input-list .monaco-list-row.focused', { hasText: label.split('/').at(-1) })
      .waitFor();
    await this.press('Enter');
    await this.page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
  }

  /** The editor of a file; without a name, the one in front. */
  editor(file) {
    const which = file === undefined ? '.editor-group-container.active ' : '';
    const uri = file === undefined ? '' : `[data-uri$="${file}"]`;
    return this.page.locator(`${which}.editor-instance .monaco-editor${uri}`).first();
  }

  /** Puts the caret before a place in the text in front, through the find box; with `select` the place is selected. */
  async goTo(text) {
    await this.press('Control+Home', 'Control+f');
    const box = this.page.locator('.find-widget.visible textarea').first();
    await box.waitFor();
    await this.press('Control+a');
    await this.type(text);
    await this.page.locator('.find-widget.visible .matchesCount', { hasText: / of [1-9]/ }).waitFor();
    await this.press('Enter', 'Escape');
  }

  /** The rows that the editor in front shows, as text. */
  async rows() {
    const rows = await this.editor()
      .locator('.view-lines .view-line')
      .evaluateAll((lines) =>
        lines
          .map((line) => ({ top: Number.parseFloat(line.style.top), text: line.textContent ?? '' }))
          .sort((one, other) => one.top - other.top)
          .map(({ text }) => text),
      );
    return rows.map((row) => row.replaceAll('\u00a0', ' '));
  }

  /** The number of squiggles of one severity: error, warning, info or hint. */
  squiggles(severity = 'error') {
    return this.editor().locator(`.squiggly-${severity}`).count();
  }

  /** Waits for a number of squiggles. */
  async seesSquiggles(number, severity = 'error') {
    await until(
      `${number} squiggles (${severity})`,
      () => this.squiggles(severity),
      (seen) => seen === number,
    );
  }

  /** What the status bar says about problems, as numbers of errors and warnings. */
  async problems() {
    const text = await this.page.locator('[id="status.problems"]').innerText();
    const [errors, warnings] = text.match(/\d+/g).map(Number);
    return { errors, warnings };
  }

  /** Waits until the status bar counts so many errors. */
  async seesErrors(number) {
    await until(
      `${number} errors in the status bar`,
      () => this.problems(),
      ({ errors }) => errors === number,
    );
  }

  /** Asks for completions, goes to the one with this label by the arrow keys, and takes it. */
  async complete(label) {
    await this.press('Control+Space');
    const rows = this.page.locator('.suggest-widget.visible .monaco-list-row');
    await rows.filter({ hasText: label }).first().waitFor();
    const focused = this.page.locator('.suggest-widget.visible .monaco-list-row.focused');
    await focused.waitFor();
    for (let step = 0; step < 40; step += 1) {
      if ((await focused.locator('.label-name').innerText()).trim() === label) {
        await this.press('Enter');
        return;
      }
      await this.press('ArrowDown');
    }
    throw new Error(`no suggestion says ${label}`);
  }

  /** Opens the list of fixes at the caret, and takes the one with this title. */
  async fix(title) {
    const row = this.page.locator('.action-widget .monaco-list-row.action', { hasText: title }).first();
    // The list closes again where the fixes were not all there yet.
    await until(`the fix ${title}`, async () => {
      await this.press('Control+.');
      return row.waitFor({ timeout: 5000 }).then(
        () => true,
        () => false,
      );
    });
    const focused = this.page.locator('.action-widget .monaco-list-row.action.focused');
    for (let step = 0; step < 40; step += 1) {
      if ((await focused.count()) > 0 && (await focused.innerText()).includes(title)) {
        await this.press('Enter');
        return;
      }
      await this.press('ArrowDown');
    }
    throw new Error(`no fix says ${title}`);
  }

  /** Saves, and waits until the tab says so. */
  async save() {
    await this.press('Control+s');
    await this.page.locator('.tab.active.dirty').waitFor({ state: 'detached' });
  }

  /** The text on the clipboard. */
  clipboard() {
    return this.page.evaluate(() => globalThis.navigator.clipboard.readText());
  }

  /** Takes a picture of what is seen, into the folder that is not committed. */
  async picture(name) {
    mkdirSync(shots, { recursive: true });
    await this.page.screenshot({ path: join(shots, `${name}.png`) });
  }
}
