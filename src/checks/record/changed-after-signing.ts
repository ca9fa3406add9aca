import type { Report } from '../../note/tree/finding.ts';
import { placeOfChange } from '../../note/signature/place.ts';
import { verify, type Change } from '../../note/signature/verify.ts';
import type { Range } from '../../note/tree/tree.ts';
import type { Check } from '../check.ts';

const forms: Readonly<Record<Change['what'], string>> = {
  changed: 'changed',
  added: 'added',
  removed: 'removed',
  'not read': 'unread',
  'without author and date': 'unattributed',
};

const isPending = (text: string, at: Range | undefined): boolean =>
  at !== undefined && text.slice(at.start, at.end).includes('??');

export const check: Check = {
  code: 'record/changed-after-signing',
  severity: 'error',
  title: 'A signed note that is not as it was signed',
  why: 'What was signed is what the clinician answers for. Later words belong in addenda, with their author and time; after a change nobody can tell what was signed.',
  sources: [{ source: 'format', mark: 'format' }],
  messages: {
    changed:
      'This was changed after {by} signed the note: {part}. Undo the change, and write it as an addendum.',
    added: 'This was added after {by} signed the note: {part}. Write it as an addendum instead.',
    removed: 'This was taken out after {by} signed the note: {part}. Put it back as it was signed.',
    unread:
      'This note is signed, and this text is not read, so the note may not be what was signed. Write it as an addendum instead.',
    unattributed:
      'This came after {by} signed the note, and it does not say who wrote it and when. Add both.',
    format:
      'This note is signed in a way that this version does not know. Verify it with the version that signed it.',
  },
  find({ source }) {
    const signature = source.value?.keys.get('signed');
    if (signature === undefined) return [];
    const found = verify(source);
    if (found.kind === 'unreadable') return [{ at: signature, form: 'format' }];
    if (found.kind !== 'signed') return [];
    const by = found.by || 'somebody';
    // The older way of signing shows less, and was never said to show more.
    const milder = found.format === 1 ? { severity: 'information' as const } : {};
    // What is still `??` is reported as not yet known.
    const known = found.changes.filter(
      ({ what, at }) => what !== 'without author and date' || !isPending(source.text, at),
    );
    return known.map((change): Report => ({
      at: placeOfChange(source, change),
      form: forms[change.what],
      args: { by, part: change.part },
      ...milder,
    }));
  },
};
