import { safeJson } from '../../documents/safe-json.ts';
import { plain } from '../../documents/one-line.ts';
import { listOfWords } from '../../documents/list-of-words.ts';
import { readNote } from '../../note/read.ts';
import { verify as verification, type Verification } from '../../note/signature/verify.ts';
import { formatOption, UsageError } from '../options/arguments.ts';
import type { Console } from '../terminal/console.ts';
import { filesOf, isPractice } from '../notes/files.ts';
import { loadFrom } from '../notes/notes.ts';
import { formatOf, out } from '../options/options.ts';
import { deliver } from '../notes/output.ts';
import { ndjsonOf } from '../report/ndjson.ts';
import type { Command } from '../options/command.ts';

const caution =
  'This shows whether a note changed after it was signed. It does not show who signed: whoever can write the file can sign it again.\n';

/** What the older way of signing passes by. */
const olderLeavesOut =
  'the older way of signing, which does not show a part taken out together with its digest, nor text that is not read';

/** What was found of one file. */
type Verified = Verification | { readonly kind: 'no note'; readonly why: string };

interface File {
  readonly path: string;
  readonly found: Verified;
}

const entryOf = ({ path, found }: File): object => ({ path, ...asJson(found) });

const forms: Readonly<
  Record<'text' | 'json' | 'ndjson', (files: readonly File[], quiet: boolean) => string>
> = {
  text: (files, quiet) =>
    `${files.map(({ path, found }) => `${plain(path)}: ${plain(wordsOf(found))}\n`).join('')}${quiet ? '' : `\n${caution}`}`,
  json: (files) => `${safeJson({ wheal: 1, files: files.map(entryOf) }, 2)}\n`,
  ndjson: (files) => ndjsonOf({}, { files: files.map(entryOf) }),
};

export const verify: Command = {
  takes: 'PATH…',
  options: [formatOf(Object.keys(forms)), out],
  about: 'Says of signed notes what has changed since they were signed. It shows change, not identity.',
  async run(given, console) {
    const format = formatOption(given, forms);
    const paths = filesOf(given.paths, console).filter((path) => !isPractice(path));
    const files: File[] = [];
    for (const path of paths) files.push({ path, found: await verified(path, console) });
    if (files.every(({ found }) => found.kind === 'unsigned'))
      throw new UsageError('none of these notes is signed, so nothing was verified');
    await deliver(forms[format](files, console.quiet === true), given.options.get('out'), console);
    return files.some(({ found }) => isFault(found)) ? 1 : 0;
  },
};

async function verified(path: string, console: Console): Promise<Verified> {
  const loaded = await loadFrom(path, console);
  if ('fault' in loaded) return { kind: 'no note', why: loaded.fault.words };
  const source = readNote(loaded.text);
  const found = verification(source);
  if (found.kind === 'unsigned' && source.value === null)
    return { kind: 'no note', why: 'there is no note in it' };
  return found;
}

const isFault = (found: Verified): boolean =>
  found.kind === 'signed' ? found.changes.length > 0 : found.kind !== 'unsigned';

const whyUnreadable: Readonly<Record<'text' | 'format', string>> = {
  text: 'it seems to be signed, and its text cannot be read',
  format: 'it is signed in a way that this version does not know',
};

function wordsOf(found: Verified): string {
  switch (found.kind) {
    case 'unsigned':
      return 'not signed.';
    case 'no note':
      return `can't be read: ${found.why}.`;
    case 'unreadable':
      return `can't be verified: ${whyUnreadable[found.why]}.`;
    case 'no digests':
    case 'signed':
      return signedWords(found);
  }
}

function signedWords(found: Extract<Verification, { readonly by: string }>): string {
  const who = `signed by ${found.by || 'nobody named'}${found.at === '' ? '' : `, ${found.at}`}`;
  if (found.kind === 'no digests') return `${who}, without digests: nothing can be compared.`;
  const older = found.format === 1 ? ` This is ${olderLeavesOut}.` : '';
  if (found.changes.length === 0) return `${who}, unchanged since.${older}`;
  const changes = found.changes.map(({ part, what }) => `${part} ${what}`);
  return `${who}, and changed since: ${listOfWords([...new Set(changes)])}.${older}`;
}

/** States of a file in JSON; `changed` and what follows it here end the run with 1. */
type State = 'unchanged' | 'unsigned' | 'changed' | 'no digests' | 'unreadable';

function asJson(found: Verified): { readonly state: State } & Readonly<Record<string, unknown>> {
  switch (found.kind) {
    case 'unsigned':
      return { state: 'unsigned' };
    case 'no note':
      return { state: 'unreadable', why: found.why };
    case 'unreadable':
      return { state: 'unreadable', why: whyUnreadable[found.why] };
    case 'no digests':
      return { state: 'no digests', by: found.by, at: found.at };
    case 'signed': {
      const { by, at, format, changes } = found;
      return {
        state: changes.length === 0 ? 'unchanged' : 'changed',
        by,
        at,
        format,
        changes: changes.map(({ part, what }) => ({ part, what })),
        ...(format === 1 ? { notCovered: olderLeavesOut } : {}),
      };
    }
  }
}
