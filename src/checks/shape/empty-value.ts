import type { Check } from '../check.ts';
import { sources, graded } from './_values.ts';

export const check: Check = {
  code: 'shape/empty-value',
  severity: 'warning',
  title: 'A key without a value',
  why: 'A key without a value records nothing, and looks as if it did.',
  sources,
  messages: {
    main: '`{key}` has no value yet. Write one, or `??` if it is not known yet.',
    required: '`{key}` has no value yet, and the record needs one. Write it, or `??` if it is not known yet.',
    item: 'This item of `{key}` is empty. Write it, or remove its dash or comma.',
    more: '{count} more keys have no value.',
  },
  unfinished: true,
  find: graded('shape/empty-value', { required: 'error' }),
};
