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
    // What the extension contributes is known: a palette that is opened sooner lacks its commands until it is closed.
    await this.page.locator('.pane-header', { hasText: 'Open Items' }).waitFor();
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

  /** Opens a file through quick open and is in its editor. */
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

  /** Chooses from a list that is open. */
  async pick(label) {
    await this.#choose(label, label);
  }

  /** Answers a question, when its box proposes what is expected; with nothing to type the proposal is taken. */
  async answer(proposed, text = '') {
    const input = this.page.locator('.quick-input-widget:visible input').first();
    await until(
      `a question that proposes ${proposed}`,
      async () => ((await input.count()) > 0 ? await input.inputValue() : undefined),
      (value) => value !== undefined && proposed.test(value),
    );
    const asked = await this.page.locator('.quick-input-message').first().innerText();
    await this.type(text);
    await this.press('Enter');
    // The next question may follow at once.
    await until(
      'the box to go on',
      async () =>
        (await this.page.locator('.quick-input-widget:visible').count()) === 0 ||
        (await this.page.locator('.quick-input-message').first().innerText()) !== asked,
    );
  }

  /** Waits until it is asked where to write, with a file of this name proposed. */
  async proposed(name) {
    const input = this.page.locator('.quick-input-widget input').first();
    await until(
      `the proposed name ${name}`,
      () => input.inputValue(),
      (path) => path.endsWith(`/${name}`),
    );
  }

  /** Waits until nothing is asked any more. */
  async noQuestion() {
    await this.page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
  }

  async #choose(text, label) {
    const input = this.page.locator('.quick-input-widget input').first();
    await input.waitFor();
    await this.type(text.replace(/^>/, ''));
    await this.page
      .locator('.quick-input-list .monaco-list-row.focused', { hasText: label.split('/').at(-1) })
      .waitFor();
    const given = await input.inputValue();
    await this.press('Enter');
    // What was chosen may ask something at once, in the same box.
    await until(
      'the list to go',
      async () => !(await input.isVisible()) || (await input.inputValue()) !== given,
    );
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

  /** Begins a note, and waits until its first gap is selected. */
  async newNote() {
    await this.press('F1');
    await this.#choose('>wheal new', 'Wheal: New Note');
    await until(
      'the first gap',
      () => this.place(),
      (place) => place.includes('(2 selected)'),
    );
  }

  /** Where the caret is, as the status bar says it. */
  async place() {
    return (await this.page.locator('[id="status.editor.selection"]').innerText()).trim();
  }

  /** Leaves a gap as it is. */
  async skip() {
    await this.#tab();
  }

  /** Writes into a gap what nobody suggests, and goes to the next. */
  async fill(text) {
    await this.type(text);
    await this.#tab();
  }

  /**
   * Types some letters into a gap, sees that the list has come to a word, and takes it.
   * @param options.last whether no gap is left Behind it
   */
  async choose(letters, word, { last = false } = {}) {
    await this.type(letters);
    await this.#sees(word, '.label-name');
    await this.#tab(last);
  }

  /**
   * Asks what fits a gap, sees a word in the first row of the list, and takes it.
   * @param options.more whether something may be typed after it, so that only another Tab goes on
   */
  async suggested(word, { more = false } = {}) {
    await this.press('Control+Space');
    await this.#sees(word, '.contents');
    await this.#tab(more);
    if (more) await this.#tab();
  }

  /** Waits until the row of the list that Tab would take has a word. */
  async #sees(word, part) {
    const focused = this.page.locator(`.suggest-widget.visible .monaco-list-row.focused ${part}`).first();
    await until(
      `the suggestion ${word}`,
      async () => ((await focused.count()) > 0 ? (await focused.innerText()).trim() : ''),
      (text) => (part === '.label-name' ? text === word : text.includes(word)),
    );
  }

  /** Presses Tab, and waits until the next gap is selected, or the caret has left the last. */
  async #tab(last = false) {
    const before = await this.place();
    await this.press('Tab');
    await until(
      'the caret to move on',
      () => this.place(),
      (place) => place !== before && place.includes('(2 selected)') !== last,
    );
  }

  /** The whole text in front, by way of the clipboard. */
  async text() {
    await this.press('Control+a', 'Control+c');
    return await until('the text', () => this.clipboard());
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
    // What fades in is there already.
    await this.page.screenshot({ path: join(shots, `${name}.png`), animations: 'disabled' });
  }
}
