import { resolve } from 'node:path';
import { DayDoses } from '../dose/day-doses.ts';
import { judgeDose } from '../dose/judge.ts';
import { readNote } from '../note/read.ts';
import { plainWord } from '../note/word-table.ts';
import type { Console } from './console.ts';
import { isPractice, load, standardInput } from './files.ts';
import { tablesFor } from './notes.ts';
import type { Practices } from './practices.ts';

const identifier = /(?:^|[\s{,"'])(?:id|mrn|chart|chart-number)["']?[ \t]*:[ \t]*([^\n\r,}#]*)/gi;

/**
 * What may be the chart number of a note, without reading it: every word behind such a key. Undefined where it takes
 * reading to know.
 */
function chartNumbers(text: string): readonly string[] | undefined {
  const found = new Set<string>();
  for (const [, typed = ''] of text.matchAll(identifier)) {
    const word = plainWord(typed.replace(/^\s*(["'])(.*)\1\s*$/, '$2'));
    if (word === '' || /^[|>&*!?"']|\\/.test(word)) return undefined;
    found.add(word);
  }
  return found.size === 0 ? undefined : [...found];
}

/**
 * What the notes among the files say was given, for those that may share a patient; undefined where there is only one
 * note, so that none was compared.
 */
export async function dayDosesOf(
  paths: readonly string[],
  console: Console,
  practices: Practices,
): Promise<DayDoses | undefined> {
  const notes = paths.filter((path) => path !== standardInput && !isPractice(path));
  if (notes.length < 2) return undefined;
  const byPatient = new Map<string, string[]>();
  for (const path of notes)
    for (const number of await numbersIn(path, console)) {
      const same = byPatient.get(number);
      if (same === undefined) byPatient.set(number, [path]);
      else same.push(path);
    }
  const shared = new Set([...byPatient.values()].filter((same) => same.length > 1).flat());
  const days = new DayDoses();
  for (const path of shared) await addTo(days, path, console, practices);
  return days;
}

async function numbersIn(path: string, console: Console): Promise<readonly string[]> {
  const loaded = await load(resolve(console.cwd, path));
  if (!('text' in loaded)) return [];
  const numbers = chartNumbers(loaded.text);
  if (numbers !== undefined) return numbers;
  const patient = readNote(loaded.text).value?.patient?.id?.value;
  return patient === undefined ? [] : [plainWord(patient)];
}

async function addTo(days: DayDoses, path: string, console: Console, practices: Practices): Promise<void> {
  const loaded = await load(resolve(console.cwd, path));
  const note = 'text' in loaded ? readNote(loaded.text).value : null;
  const patient = note?.patient?.id?.value;
  if (note === null || patient === undefined) return;
  days.add(path, patient, judgeDose(note, await tablesFor(path, practices)));
}
