import type { Finding, Fix } from '../../note/tree/finding.ts';
import type { Check } from '../check.ts';
import { format } from '../sources.ts';

/** Writes the characters as which they were read. */
const asRead =
  (title: string) =>
  (_place: unknown, { start, end, data, form }: Finding): readonly Fix[] =>
    data === undefined || form === 'direction'
      ? []
      : [{ title, kind: 'spelling', sure: true, edits: [{ start, end, ...(data as { text: string }) }] }];

const lookAlike: Check = {
  code: 'yaml/look-alike',
  severity: 'warning',
  milder: { space: 'information' },
  title: 'A character that looks like another',
  why: 'A letter of another alphabet, a wide digit or an unusual space looks right, and no search finds it, neither here nor in the chart. Wheal reads it as the character that it looks like.',
  sources: [format],
  messages: {
    main: 'This has letters of another alphabet that look like `{read}`, and was read as that. Type it again.',
    wide: 'These are wide characters; they were read as `{read}`. Type them again.',
    space: 'This is not an ordinary space; it was read as one. Type it again.',
  },
  fix: asRead('Write the usual characters'),
};

const unseenCharacter: Check = {
  code: 'yaml/unseen-character',
  severity: 'error',
  milder: { main: 'warning' },
  title: 'An invisible character',
  why: 'What is invisible makes two equal words different, and a character that changes the direction of text shows numbers and words in another order than they were typed.',
  sources: [format],
  messages: {
    main: 'There is an invisible character here; the text was read without it. Remove it.',
    direction:
      'A character here changes the direction of the text, which may show in another order than it was typed. Type this line again, and compare each number.',
  },
  fix: asRead('Take the invisible character out'),
};

/** What reading has seen through. */
export const checks: readonly Check[] = [lookAlike, unseenCharacter];
