import { resolve } from 'node:path';
import { DayDoses } from '../../dose/day-doses.ts';
import { ByPatient } from '../../note/chart-numbers.ts';
import type { Console } from '../terminal/console.ts';
import { isInput, isPractice, load, standardInput } from './files.ts';
import { loadFrom, tablesFor } from './notes.ts';
import type { Practices } from './practices.ts';

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
  const input = notes.some((path) => isInput(path, console))
    ? await loadFrom(console.inputName ?? standardInput, console)
    : undefined;
  const textOf = (path: string): string | undefined => {
    const loaded = input !== undefined && isInput(path, console) ? input : load(resolve(console.cwd, path));
    return 'text' in loaded ? loaded.text : undefined;
  };
  const byPatient = new ByPatient();
  for (const path of notes) byPatient.set(path, textOf(path));
  const days = new DayDoses();
  for (const path of byPatient.shared) {
    const text = textOf(path);
    if (text !== undefined) days.read(path, text, tablesFor(path, practices));
  }
  return days;
}
