import { readNote } from '../../../src/note/read.ts';
import { digestOfSignature, digestsOf, partsOf } from '../../../src/note/signature/parts.ts';
import type { TextEdit } from '../../../src/note/tree/finding.ts';

/** Signs as the versions before `signed.format: 2` did. */
export function olderEdit(text: string, by: string, at: string): TextEdit {
  const { root } = readNote(text);
  if (root === null) throw new Error('there is no note');
  const digests = digestsOf(partsOf(root, 1));
  const all = [...digests, ['signature', digestOfSignature({ by, at }, digests, 1)] as const];
  const lines = all.map(([part, digest]) => `    ${part}: ${digest}\n`);
  const block = `signed:\n  by: "${by}"\n  at: ${at}\n  digests:\n${lines.join('')}`;
  return { start: text.length, end: text.length, text: block };
}
