import type { Report } from '../../note/tree/finding.ts';
import type { Accepted } from '../../note/generated/types.ts';
import type { Check } from '../check.ts';
import { allAccepted } from '../acceptance.ts';
import { format } from '../sources.ts';

/** What an acceptance leaves out. `??` and an empty value have findings of their own. */
function unexplained({ check, reason, head, keys }: Accepted): readonly Report[] {
  const args = { check: check?.text ?? 'a finding' };
  if (!keys.has('reason')) return [{ at: head, args }];
  if (reason?.value === undefined || keys.has('by')) return [];
  return [{ at: head, form: 'nobody', severity: 'information', args }];
}

export const check: Check = {
  code: 'record/accepted-without-reason',
  misses: ({ form }) => (form === 'main' ? 'reason' : 'by'),
  severity: 'warning',
  title: 'A finding accepted without a reason',
  why: 'Accepting a finding says that the clinician has weighed it. Without the reason nobody can follow that later, so it does not count.',
  sources: [format],
  messages: {
    main: '{check} is accepted without a reason, so it does not count. Write `reason`.',
    nobody: '{check} is accepted, but the note does not say by whom. Write `by`.',
  },
  find: ({ note }) => allAccepted(note).flatMap(unexplained),
};
