import type { Note } from '../generated/types.ts';
import { readNote, type Source } from '../read.ts';
import { quoted } from '../text/quote.ts';
import { applyEdits } from '../tree/edit.ts';
import type { TextEdit } from '../tree/finding.ts';
import type { MapNode } from '../tree/tree.ts';
import { digestOfSignature, digestsOf, newestFormat, partsOf, signaturePart, type Signer } from './parts.ts';
import { verify } from './verify.ts';

/** Why a note is not signed. */
export type NotSigned = 'unreadable' | 'signed already' | 'no name' | 'draft';

/**
 * The edit that signs a note: it adds a block `signed` at its end with the digest of each part that the signature
 * covers. Whether a note that has findings may be signed is for the caller to ask.
 * @param by who signs, as the practice writes names
 * @param at local date and time, `2026-03-02 16:40`
 */
export function signatureEdit(source: Source<Note>, by: string, at: string): TextEdit | NotSigned {
  const { asTyped: root, damage, text } = source;
  if (source.value === null || root === null || damage.length > 0 || root.flow) return 'unreadable';
  if (verify(source).kind !== 'unsigned') return 'signed already';
  if (isDraft(root)) return 'draft';
  if (by.trim() === '') return 'no name';
  const edit = { start: text.length, end: text.length, text: blockFor(text, root, { by: by.trim(), at }) };
  // What ends a document, or a text that runs on, would swallow the block; what is not read can't be signed.
  const after = verify(readNote(applyEdits(text, [edit])));
  return after.kind === 'signed' && after.changes.length === 0 ? edit : 'unreadable';
}

/** The block that is put at the end of a text. */
function blockFor(text: string, root: MapNode, who: Signer): string {
  const digests = digestsOf(partsOf(root, newestFormat));
  const all = [...digests, [signaturePart, digestOfSignature(who, digests, newestFormat)] as const];
  const lineEnd = text.includes('\r\n') ? '\r\n' : '\n';
  const lines = [
    'signed:',
    `  format: ${newestFormat}`,
    `  by: ${quoted(who.by)}`,
    `  at: ${who.at}`,
    '  digests:',
    ...all.map(([part, digest]) => `    ${/^[\w -]+$/.test(part) ? part : quoted(part)}: ${digest}`),
  ];
  const before = text === '' || /[\r\n]$/.test(text) ? '' : lineEnd;
  return `${before}${lines.join(lineEnd)}${lineEnd}`;
}

/** Whether a note says that it is a draft. */
const isDraft = ({ entries }: MapNode): boolean =>
  entries.some(
    ({ key, value }) =>
      key === 'draft' && !(value?.kind === 'text' && /^(no|false)$/i.test(value.text.trim())),
  );
