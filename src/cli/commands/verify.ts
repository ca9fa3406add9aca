import { plain } from '../../documents/one-line.ts';
import { listOfWords } from '../../documents/list-of-words.ts';
import { verify as verification, type Verification } from '../../documents/signature/verify.ts';
import { readNote } from '../../note/read.ts';
import { readArguments, UsageError } from '../arguments.ts';
import { filesOf, isPractice } from '../files.ts';
import { loadFrom } from '../notes.ts';
import type { Command } from './command.ts';

const caution =
  'This shows whether a note changed after it was signed. It does not show who signed: whoever can write the file can sign it anew.\n';

export const verify: Command = {
  usage: 'wheal verify PATH…',
  about: 'Says of signed notes what has changed since they were signed. It shows change, not identity.',
  async run(argv, console) {
    const given = readArguments(argv, []);
    if (given.paths.length === 0) throw new UsageError('verify needs a path');
    const paths = filesOf(given.paths, console.cwd).filter((path) => !isPractice(path));
    let [signed, faults] = [0, 0];
    for (const path of paths) {
      const loaded = await loadFrom(path, console);
      const source = 'text' in loaded ? readNote(loaded.text) : undefined;
      if (source === undefined || source.value === null) {
        faults += 1;
        const why = 'fault' in loaded ? loaded.fault.words : 'there is no note in it';
        console.write(`${plain(path)}: can't be read: ${why}.\n`);
        continue;
      }
      const found = await verification(source);
      if (found.kind !== 'unsigned') signed += 1;
      if (isFault(found)) faults += 1;
      console.write(`${plain(path)}: ${plain(wordsOf(found))}\n`);
    }
    if (signed === 0 && faults === 0)
      throw new UsageError('none of these notes is signed, so nothing was verified');
    console.write(`\n${caution}`);
    return faults > 0 ? 1 : 0;
  },
};

const isFault = (found: Verification): boolean =>
  found.kind === 'no digests' || (found.kind === 'signed' && found.changes.length > 0);

function wordsOf(found: Verification): string {
  if (found.kind === 'unsigned') return 'not signed.';
  const who = `signed by ${found.by || 'nobody named'}${found.at === '' ? '' : `, ${found.at}`}`;
  if (found.kind === 'no digests') return `${who}, without digests: nothing can be compared.`;
  if (found.changes.length === 0) return `${who}, unchanged since.`;
  return `${who}, and changed since: ${listOfWords(found.changes.map(({ part, what }) => `${part} ${what}`))}.`;
}
