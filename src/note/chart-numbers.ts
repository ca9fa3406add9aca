import { readNote } from './read.ts';
import { legible, withoutUnseen } from './text/characters.ts';
import { plainWord } from './words/word-table.ts';

const identifier = /(?:^|[\s{,"'])(?:id|mrn|chart|chart-number)["']?[ \t]*:[ \t]*([^\n\r,}#]*)/gi;

/**
 * The form under which chart numbers are compared where a dose could be missed: X7701 and X-7701 are one patient. Never
 * asked where a result or a step is taken for that of another note.
 */
export function chartKey(number: string): string {
  const plain = plainWord(number);
  return plain.replace(/[ _-]/g, '') || plain;
}

/**
 * What may be the chart number of a note, in plain form: every word after such a key, without reading the note, and
 * its patient's where it takes reading to know. More than its own may be among them, never less.
 */
export function chartNumbersIn(text: string): readonly string[] {
  const found = new Set<string>();
  for (const [, typed = ''] of withoutUnseen(legible(text)).matchAll(identifier)) {
    const word = chartKey(typed.replace(/^\s*(["'])(.*)\1\s*$/, '$2'));
    if (word === '' || /^[|>&*!?"']|\\/.test(word)) return numberRead(text);
    found.add(word);
  }
  return found.size === 0 ? numberRead(text) : [...found];
}

function numberRead(text: string): readonly string[] {
  const patient = readNote(text).value?.patient?.id?.value;
  return patient === undefined ? [] : [chartKey(patient)];
}

/** Which of many notes may mention one patient. */
export class ByPatient {
  private readonly numbers = new Map<string, readonly string[]>();
  private readonly paths = new Map<string, Set<string>>();

  /**
   * Takes in a note, or takes it in again.
   * @param text undefined where there is none, or it can't be read
   * @returns the chart numbers that are concerned: those before and those now
   */
  set(path: string, text: string | undefined): ReadonlySet<string> {
    const concerned = this.setNumbers(path, text === undefined ? [] : chartNumbersIn(text));
    if (text === undefined) this.numbers.delete(path);
    return concerned;
  }

  /** The same, where the numbers of a note are known. */
  setNumbers(path: string, now: readonly string[]): ReadonlySet<string> {
    const before = this.numbers.get(path) ?? [];
    for (const number of before) this.paths.get(number)?.delete(path);
    for (const number of now) {
      const same = this.paths.get(number);
      if (same === undefined) this.paths.set(number, new Set([path]));
      else same.add(path);
    }
    this.numbers.set(path, now);
    return new Set([...before, ...now]);
  }

  /** The notes that may be of a patient. */
  of(patient: string): ReadonlySet<string> {
    return this.paths.get(chartKey(patient)) ?? none;
  }

  /** Every note that may share its patient with one of some, and those of them that share theirs. */
  sharing(some: readonly string[]): ReadonlySet<string> {
    const numbers = new Set(some.flatMap((path) => this.numbers.get(path) ?? []));
    return new Set(
      [...numbers].flatMap((number) => {
        const same = this.paths.get(number) ?? none;
        return same.size > 1 ? [...same] : [];
      }),
    );
  }

  /** Every note that may share its patient with another. */
  get shared(): ReadonlySet<string> {
    return new Set([...this.paths.values()].flatMap((same) => (same.size > 1 ? [...same] : [])));
  }
}

const none: ReadonlySet<string> = new Set();
