import type { Check } from '../check.ts';
import { sources, graded } from './_values.ts';

export const check: Check = {
  code: 'shape/wrong-kind',
  severity: 'error',
  title: 'A list, a map or a text in the wrong place',
  why: 'A value of the wrong kind cannot be read, so nothing that it says is checked.',
  sources,
  messages: {
    main: '`{key}` takes {wanted}; here it has {found}, which is not read.',
    more: '{count} more values are of the wrong kind.',
  },
  find: graded('shape/wrong-kind', {}),
};
