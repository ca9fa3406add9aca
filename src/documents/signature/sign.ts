import type { Note } from '../../note/generated/types.ts';
import type { TextEdit } from '../../note/tree/finding.ts';
import { quoted } from '../../note/text/quote.ts';
import { applyEdits } from '../../note/tree/edit.ts';
import { readNote, type Source } from '../../note/read.ts';
import { digestsOf, partsOf } from './digests.ts';
import { verify } from './verify.ts';

/** Why a note is not signed. */
export type NotSigned = 'unreadable' | 'signed already' | 'no name';

/**
 * The edit that signs a note: it adds a block `signed` at its end with the digest of each part that the signature
 * covers. Whether a note that has findings may be signed is for the caller to ask.
 * @param by who signs, as the practice writes names
 * @param at local date and time, `2026-03-02 16:40`
 */
export async function signatureEdit(
  { value: note, root, damage, text }: Source<Note>,
  by: string,
  at: string,
): Promise<TextEdit | NotSigned> {
  if (note === null || root === null || damage.length > 0 || root.flow) return 'unreadable';
  if (note.keys.has('signed')) return 'signed already';
  if (by.trim() === '') return 'no name';
  const digests = await digestsOf(partsOf(root, { by: by.trim(), at }));
  const lineEnd = text.includes('\r\n') ? '\r\n' : '\n';
  const rows = [
    'signed:',
    `  by: ${quoted(by.trim())}`,
    `  at: ${at}`,
    '  digests:',
    ...[...digests].map(([part, digest]) => `    ${/^[\w -]+$/.test(part) ? part : quoted(part)}: ${digest}`),
  ];
  const before = text === '' || /[\r\n]$/.test(text) ? '' : lineEnd;
  const edit = { start: text.length, end: text.length, text: `${before}${rows.join(lineEnd)}${lineEnd}` };
  // What ends a document, or a text that runs on, would swallow the block.
  const after = await verify(readNote(applyEdits(text, [edit])));
  return after.kind === 'signed' && after.changes.length === 0 ? edit : 'unreadable';
}
