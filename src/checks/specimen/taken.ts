import type { Specimen } from '../../note/generated/types.ts';
import { isAbsent } from '../absent.ts';
import { isProcedureIncomplete } from '../complete.ts';
import type { Check, Report } from '../check.ts';
import { rowsIn } from '../words.ts';

const opening =
  /^(?:not sent|nothing sent|none sent|not submitted|no specimen|no tissue|none|no|discarded)\b[\s,;:.()-]*/i;

/** What is wrong with the words that say why nothing was sent. */
function unsent({ notSent, keys }: Specimen): Report | undefined {
  const text = notSent?.value;
  if (notSent === undefined || text === undefined) return undefined;
  const rest = text.replace(opening, '');
  if (rest === '') return { at: notSent, form: 'main' };
  // A bare text stands for the reason; one that does not begin so was meant for something else.
  const bare = keys.get('not-sent')?.start === notSent.start;
  return bare && rest === text ? { at: notSent, form: 'misplaced', args: { text } } : undefined;
}

export const checks: readonly Check[] = [
  {
    code: 'specimen/missing',
    when: isProcedureIncomplete,
    misses: () => 'specimen',
    severity: 'warning',
    title: 'Tissue taken, and no word on the specimen',
    why: 'Specimens that nobody recorded are the ones that are lost. Tissue that is not sent deserves its reason.',
    sources: [
      { source: 'insurer-tips', mark: 'Q' },
      { source: 'format', mark: 'format' },
    ],
    messages: {
      main: 'Tissue was taken ({method}), and nothing is said about the specimen. Write `specimen` with label, medium and tests; or `not sent` and why.',
    },
    find: (subject) =>
      (subject.note.procedures ?? []).flatMap((procedure) => {
        const [row] = rowsIn(subject.tables.methods, procedure.method);
        if (row?.takesTissue !== true || !isAbsent(subject, procedure, 'specimen', 'specimens')) return [];
        return [{ at: procedure.head, args: { method: row.name } }];
      }),
  },
  {
    code: 'specimen/not-sent-without-reason',
    severity: 'warning',
    title: 'Not sent, and no reason',
    why: 'Whoever reads the note later must be able to tell a decision from a forgotten container.',
    sources: [
      { source: 'insurer-tips', mark: 'Q' },
      { source: 'format', mark: 'format' },
    ],
    messages: {
      main: 'Nothing was sent, and the note does not say why. Write the reason: `not sent, benign skin tag`.',
      misplaced:
        '`{text}` stands where the note says that nothing was sent. If a specimen was sent, write a map: `{label: A, medium: formalin}`; if not, begin with `not sent` and the reason.',
    },
    find: ({ note }) =>
      (note.procedures ?? []).flatMap(({ specimen = [] }) =>
        specimen.map(unsent).filter((report) => report !== undefined),
      ),
  },
];
