import type { Check } from '../check.ts';
import { sources, graded } from './_values.ts';

export const check: Check = {
  code: 'shape/pending',
  severity: 'information',
  title: 'Not yet known',
  why: '?? marks what somebody still has to find out and write.',
  sources,
  messages: {
    main: '`{key}` is not yet known. Replace `??` when it is.',
    required: '`{key}` is not yet known, and the record needs it. Replace `??` before signing.',
    more: '{count} more values are not yet known.',
  },
  find: graded('shape/pending', { required: 'warning' }),
};
