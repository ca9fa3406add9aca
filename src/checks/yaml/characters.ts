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
  why: 'A letter of another alphabet, a wide digit or a space that is none looks right and is found by no search, in the chart as little as here. Wheal reads it as what it looks like.',
  sources: [format],
  messages: {
    main: 'This has letters of another alphabet that look like `{read}`, and was read as that. Type it anew.',
    wide: 'These are wide characters; they were read as `{read}`. Type them anew.',
    space: 'This is not an ordinary space; it was read as one. Type it anew.',
  },
  fix: asRead('Write the usual characters'),
};

const unseenCharacter: Check = {
  code: 'yaml/unseen-character',
  severity: 'error',
  milder: { main: 'warning' },
  title: 'A character that nobody sees',
  why: 'What is invisible makes two equal words different, and what turns the direction of a text shows numbers and words in another order than they are written.',
  sources: [format],
  messages: {
    main: 'There is a character here that nobody sees; the text was read without it. Take it out.',
    direction:
      'A character here turns the direction of the text, which may show in another order than it is written. Type this line anew, and compare each number.',
  },
  fix: asRead('Take the invisible character out'),
};

/** What reading has seen through. */
export const checks: readonly Check[] = [lookAlike, unseenCharacter];
