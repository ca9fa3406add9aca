import type { Check } from '../check.ts';
import { format } from '../sources.ts';

const sources: Check['sources'] = [format];

export const checks: readonly Check[] = [
  {
    code: 'shape/unknown-key',
    severity: 'error',
    title: 'A key that notes do not have',
    why: 'What stands under a key that is not known is not checked, and whoever misspelt a key believes that it is.',
    sources,
    messages: {
      main: '`{key}` is not a key of this part ({map}). Take it out, or write it under `remarks`.',
      near: '`{key}` is not a key. Did you mean `{near}`? It was read as that.',
      perhaps: '`{key}` is not a key of this part ({map}). Did you mean `{near}`?',
      either:
        '`{key}` is not a key of this part ({map}). It may be `{near}` or `{rival}`; what it says is read as neither.',
      elsewhere: '`{key}` does not belong here ({map}). It belongs to: {owners}.',
      blank:
        '`{key}` needs a blank behind its colon. Where its value holds another colon, put the value into quotes.',
      more: '{count} more keys are not known.',
    },
    fix(_place, { start, end, data }) {
      if (data === undefined) return [];
      const { near, rival, sure } = data as { near: string; rival?: string; sure: boolean };
      return [near, ...(rival === undefined ? [] : [rival])].map((text) => ({
        title: `Change to ${text}`,
        kind: 'spelling',
        sure,
        edits: [{ start, end, text }],
      }));
    },
  },
  {
    code: 'shape/missing-key',
    misses: ({ form, args }) => (form === 'main' ? String(args['key']) : undefined),
    severity: 'error',
    title: 'A key without which the record can not be used',
    why: 'Some facts make a record: when, who, where on the body, how. Without them the rest says little.',
    sources,
    messages: {
      main: '`{key}` is missing here ({map}). {help}',
      more: '{count} more keys are missing.',
    },
  },
];
