import type { Severity } from '../../note/tree/finding.ts';
import type { Check, Report, Subject } from '../check.ts';

const sources: Check['sources'] = [{ source: 'format', mark: 'format' }];

/** As reading noticed it, with the severity that its form asks for. */
const graded = (code: string, byForm: Readonly<Record<string, Severity>>) =>
  function ({ problems }: Subject): readonly Report[] {
    const found: Report[] = [];
    for (const { start, end, ...rest } of problems(code)) {
      const severity = byForm[rest.form ?? 'main'];
      found.push({ at: { start, end }, ...rest, ...(severity === undefined ? {} : { severity }) });
    }
    return found;
  };

export const checks: readonly Check[] = [
  {
    code: 'shape/wrong-kind',
    severity: 'error',
    title: 'A list, a map or a text in the wrong place',
    why: 'A value of the wrong kind can not be read, so nothing that it says is checked.',
    sources,
    messages: {
      main: '`{key}` takes {wanted}; here it has {found}, which is not read.',
      more: '{count} more values are of the wrong kind.',
    },
    find: graded('shape/wrong-kind', {}),
  },
  {
    code: 'shape/empty-value',
    severity: 'warning',
    title: 'A key without a value',
    why: 'A key without a value records nothing, and looks as if it did.',
    sources,
    messages: {
      main: '`{key}` has no value yet. Write one, `??` if it is not known yet, or take the key out.',
      required:
        '`{key}` has no value yet, and the record needs one. Write it, or `??` if it is not known yet.',
      item: 'This item of `{key}` is empty. Write it, or take its dash or comma out.',
      more: '{count} more keys have no value.',
    },
    find: graded('shape/empty-value', { required: 'error' }),
  },
  {
    code: 'shape/pending',
    severity: 'information',
    title: 'Not yet known',
    why: 'The sign ?? stands for what somebody still has to find out and write.',
    sources,
    messages: {
      main: '`{key}` is not yet known. Replace `??` when it is.',
      required: '`{key}` is not yet known, and the record needs it. Replace `??` before signing.',
      more: '{count} more values are not yet known.',
    },
    find: graded('shape/pending', { required: 'warning' }),
  },
];
