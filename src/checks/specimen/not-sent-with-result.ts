import type { Report } from '../../note/tree/finding.ts';
import type { Check } from '../check.ts';
import type { Specimen } from '../../note/generated/types.ts';
import { format } from '../sources.ts';

const saysSent = ({ results, sent }: Specimen): 'main' | 'sent' | undefined =>
  results !== undefined && results.length > 0 ? 'main' : sent?.value !== undefined ? 'sent' : undefined;

/** What says that a specimen was sent which the note says was not; the key itself is where to look. */
function contradiction(specimen: Specimen): Report | undefined {
  const { notSent, keys } = specimen;
  const form = saysSent(specimen);
  const at = form === undefined ? undefined : keys.get(form === 'main' ? 'results' : 'sent');
  if (notSent === undefined || at === undefined) return undefined;
  const { start, end } = notSent;
  return { at, form: form ?? 'main', related: [{ start, end, form: 'not-sent', args: {} }] };
}

export const check: Check = {
  code: 'specimen/not-sent-with-result',
  severity: 'warning',
  title: 'Not sent, and yet sent or with a result',
  why: 'A result that belongs to no specimen of this visit may be that of another patient, and a specimen that counts as not sent is not looked for.',
  sources: [format],
  messages: {
    main: 'The note says that this was not sent, and there is a result. Find out which is right: look at the request and at the name on the report.',
    sent: 'The note says that this was not sent, and here is a day on which it was. Find out which is right.',
    'not-sent': 'not sent',
  },
  find: ({ note }) =>
    (note.procedures ?? []).flatMap(({ specimen = [] }) =>
      specimen.map(contradiction).filter((report) => report !== undefined),
    ),
};
