import type { Args, Problem, Report } from '../../note/tree/finding.ts';
import type { Check, Subject } from '../check.ts';
import { format } from '../sources.ts';
import { dangerUnder, type Hidden } from '../unread.ts';

const sources: Check['sources'] = [format];

/** What may be under an unknown key, and where that belongs. */
const belongs: Readonly<Record<Hidden, Args>> = {
  dose: { what: 'a dose', right: '`anesthetic`' },
  allergen: { what: 'an allergy', right: '`allergies` of the patient' },
  implant: { what: 'an implant', right: '`implants` of the patient' },
};

/** Of what nobody reads under unknown keys, a danger is sent to its own key and never to the remarks. */
function unknownKeys({ problems, source, tables }: Subject): readonly Report[] {
  const found = problems('shape/unknown-key');
  if (found.length === 0) return [];
  const entries = new Map(source.unread.map((entry) => [entry.start, entry]));
  return found.map((problem): Report => {
    const entry = isBare(problem) ? entries.get(problem.at.start) : undefined;
    const danger = entry === undefined ? undefined : dangerUnder(entry, tables);
    if (danger === undefined) return problem;
    return { at: problem.at, form: 'danger', args: { ...problem.args, ...belongs[danger] } };
  });
}

/** Whether nothing is known yet of where a key belongs. */
const isBare = ({ form = 'main' }: Problem): boolean => form === 'main' || form === 'remarks';

export const checks: readonly Check[] = [
  {
    code: 'shape/unknown-key',
    severity: 'error',
    title: 'A key that notes do not have',
    why: 'What is under an unknown key is not checked, though whoever misspelled the key believes that it is.',
    sources,
    messages: {
      main: '`{key}` is not a key of this part ({map}), so nobody reads what is under it. Check its spelling, or move what is under it to the key that it belongs to.',
      remarks:
        '`{key}` is not a key of this part ({map}), so nobody reads what is under it. Check its spelling, or write it under `remarks`.',
      danger:
        '`{key}` is not a key of this part ({map}), and what is under it may be {what}. Move it to the key that it belongs to, such as {right}.',
      near: '`{key}` is not a key. Did you mean `{near}`? It was read as that.',
      perhaps: '`{key}` is not a key of this part ({map}). Did you mean `{near}`?',
      either:
        '`{key}` is not a key of this part ({map}). It may be `{near}` or `{rival}`, and is read as neither.',
      elsewhere: '`{key}` does not belong here ({map}). It belongs to: {owners}.',
      blank:
        '`{key}` needs a space after its colon. If its value has another colon, put the value in quotes.',
      more: '{count} more keys are not known.',
    },
    find: unknownKeys,
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
    title: 'A key without which the record cannot be used',
    why: 'Some facts make a record: when, who, where on the body, how. Without them the rest says little.',
    sources,
    messages: {
      main: '`{key}` is missing here ({map}). {help}',
      more: '{count} more keys are missing.',
    },
  },
];
