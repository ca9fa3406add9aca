import type { Report } from '../../note/tree/finding.ts';
import type { Specimen } from '../../note/generated/types.ts';
import type { Check } from '../check.ts';
import { format } from '../sources.ts';

const opening =
  /^(?:not sent|nothing sent|none sent|not submitted|no specimen|no tissue|none|no|discarded)\b[\s,;:.()-]*/i;

/** What is wrong with the words that say why nothing was sent. */
function unsent({ notSent, keys }: Specimen): Report | undefined {
  const text = notSent?.value;
  if (notSent === undefined || text === undefined) return undefined;
  const rest = text.replace(opening, '');
  if (rest === '') return { at: notSent, form: 'main' };
  // A bare text means the reason; one that does not begin so was meant for something else.
  const bare = keys.get('not-sent')?.start === notSent.start;
  return bare && rest === text ? { at: notSent, form: 'misplaced', args: { text } } : undefined;
}

export const check: Check = {
  code: 'specimen/not-sent-without-reason',
  severity: 'warning',
  title: 'Not sent, and no reason',
  why: 'Whoever reads the note later must be able to tell a decision from a forgotten container.',
  sources: [{ source: 'insurer-tips', mark: 'Q' }, format],
  messages: {
    main: 'Nothing was sent, and the note does not say why. Write the reason: `not sent, benign skin tag`.',
    misplaced:
      '`{text}` is read as the reason why nothing was sent. If so, begin with `not sent`; if a specimen was sent, write `{label: A, medium: formalin}`.',
  },
  find: ({ note }) =>
    (note.procedures ?? []).flatMap(({ specimen = [] }) =>
      specimen.map(unsent).filter((report) => report !== undefined),
    ),
};
